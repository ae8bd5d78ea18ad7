import { expect, test } from 'vitest';
import { impurities } from './purity-rules';
import { readText, sourceFiles } from './repository';

const pureFiles = sourceFiles.filter((path) => /^src\/(units|plan|calc|sheets)\//.test(path));

test('units, plan, calc and sheets have no clock, no random source, no console and no locale of the machine', () => {
  expect(pureFiles.length).toBeGreaterThan(40);
  expect(pureFiles.flatMap((path) => impurities(path, readText(path)))).toEqual([]);
});

test.each([
  ['const x = Math.random();', 'uses Math.random'],
  ["const x = Math['random']();", 'uses Math otherwise than as Math.name'],
  ['const { random } = Math;', 'uses Math otherwise than as Math.name'],
  ['const dice = Math; dice.random();', 'uses Math otherwise than as Math.name'],
  ['const x = Date.now();', 'uses Date'],
  ['const x = new Date();', 'uses Date'],
  ['const x = Date();', 'uses Date'],
  ['const clock = Date;', 'uses Date'],
  ['const given = { Date };', 'uses Date'],
  ['const x = performance.now();', 'uses performance'],
  ["console.log('x');", 'uses console'],
  ["globalThis['Date'].now();", 'uses globalThis'],
  ["eval('1');", 'uses eval'],
  ['const x = (1.5).toLocaleString();', 'toLocaleString without a locale'],
  ["const x = 'a'.localeCompare('b');", 'localeCompare without a locale'],
  ['const x = new Intl.NumberFormat();', 'uses Intl without a locale'],
  ['const x = Intl.NumberFormat(undefined, {});', 'uses Intl without a locale'],
])('the guard finds %s', (text, what) => {
  expect(impurities('src/calc/planted.ts', text)).toEqual([`src/calc/planted.ts:1 ${what}`]);
});

test.each([
  ['const x = Math.floor(2.5);'],
  ['const { Date: name } = sheet;'],
  ['const x = sheet.Date;'],
  ['const row = { console: 1, performance: 2 };'],
  ["const x = new Intl.NumberFormat('en-GB').format(2);"],
  ["const x = 'a'.localeCompare('b', 'en');"],
  ['type Named = [performance: number];'],
])('the guard passes %s', (text) => {
  expect(impurities('src/calc/planted.ts', text)).toEqual([]);
});
