import { readFileSync } from 'node:fs';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { pictures } from '../../src/cli/pictures';
import { givenTerminal } from './given-terminal';

const flat = readFileSync('fixtures/plans/flat.json', 'utf8');
const given = { file: 'plan.json', options: new Set<string>(), out: 'out' };

test('pictures writes a PNG for each node, which another program decodes, and names each', () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  expect(pictures.run(given, terminal)).toBe(0);
  const names = [...terminal.written.keys()];
  expect(names[0]).toBe('out/pictures/N1.png');
  expect(terminal.output().trimEnd().split('\n')).toHaveLength(names.length);
  const { width, height } = PNG.sync.read(Buffer.from(terminal.written.get('out/pictures/N1.png')!));
  expect(Math.min(width, height)).toBeGreaterThan(0);
});

test('pictures --zip writes one file', () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  expect(pictures.run({ ...given, options: new Set(['--zip']) }, terminal)).toBe(0);
  expect([...terminal.written.keys()]).toEqual(['out/outputs.zip']);
  // APPNOTE.TXT 6.3, 4.3.7: a ZIP begins with 'PK', 3, 4.
  expect([...terminal.written.get('out/outputs.zip')!.subarray(0, 4)]).toEqual([0x50, 0x4b, 3, 4]);
});

test('pictures ends with 1 and says why where no node feeds a panel', () => {
  const plan = JSON.parse(flat);
  const terminal = givenTerminal({ 'plan.json': JSON.stringify({ ...plan, walls: [], ceilings: [] }) });
  expect(pictures.run(given, terminal)).toBe(1);
  expect(terminal.complaints()).toContain('no node feeds a panel');
  expect(terminal.written.size).toBe(0);
});

test('pictures ends with 2 where the folder cannot be written', () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  expect(pictures.run({ ...given, out: 'locked' }, terminal)).toBe(2);
  expect(terminal.complaints()).toContain('locked/pictures/N1.png: it may not be written');
});
