import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { find } from '../../src/cli/find';
import { starterCatalogue } from '../../src/plan/catalogue/starter-catalogue';
import { givenTerminal } from './given-terminal';

const plain = { file: 'wish.json', options: new Set<string>() };
const hall = { hall: { lengthMm: 30_000, widthMm: 26_000 } };
const ring = { ...hall, wall: { form: 'ring', acrossMm: 20_000, heightMm: 6000, openingMm: 4000 } };

test('find of a wish alone lists every panel of the starter catalogue, in lines of eighty columns', () => {
  const terminal = givenTerminal({ 'wish.json': JSON.stringify(ring) });
  expect(find.run(plain, terminal)).toBe(0);
  for (const { name } of starterCatalogue.panels) expect(terminal.output()).toContain(name);
  for (const line of terminal.output().split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  expect(terminal.output()).not.toMatch(/NaN|Infinity|undefined/);
});

test('find says that rings are taken as closed where the wish states no opening, and only there', () => {
  const closed = 'The wish states no opening: the rings are taken as closed.';
  const answer = (wall: object, vehicle = {}) => {
    const terminal = givenTerminal({ 'wish.json': JSON.stringify({ ...hall, wall, vehicle }) });
    find.run(plain, terminal);
    return terminal.output();
  };
  const { openingMm: _, ...without } = ring.wall;
  expect(answer(without)).toContain(closed);
  expect(answer(ring.wall)).not.toContain(closed);
  expect(answer({ ...without, form: 'flat' })).not.toContain(closed);
  expect(answer(without, { widthMm: 2600, heightMm: null })).toContain('taken as open as wide as what must drive in.');
});

test('find says which builds stand above the clear height of the hall', () => {
  const low = { ...ring, hall: { ...hall.hall, clearHeightMm: 4000 } };
  const terminal = givenTerminal({ 'wish.json': JSON.stringify(low) });
  find.run(plain, terminal);
  expect(terminal.output()).toContain('above the clear height of the hall');
});

test('find --feet writes the same wish in feet', () => {
  // 24 ft are 7315.2 mm, twelve panels of 2 ft: the flat wall of whole panels is as long as it was wished.
  const flat = { wall: { form: 'flat', acrossMm: 7315.2, heightMm: 3048 } };
  const terminal = givenTerminal({ 'wish.json': JSON.stringify(flat) });
  find.run({ ...plain, options: new Set(['--feet']) }, terminal);
  expect(terminal.output()).toMatch(/Across +24' 0"/);
});

test('find of a plan takes its own catalogue', () => {
  const terminal = givenTerminal({ 'wish.json': readFileSync('fixtures/plans/flat.json', 'utf8') });
  expect(find.run(plain, terminal)).toBe(0);
  const { catalogue } = JSON.parse(readFileSync('fixtures/plans/flat.json', 'utf8'));
  for (const { name } of catalogue.panels) expect(terminal.output()).toContain(name);
});

test('find of a wish that says no size gives each panel its reason', () => {
  const terminal = givenTerminal({ 'wish.json': '{"wall": {"form": "ring"}}' });
  expect(find.run(plain, terminal)).toBe(0);
  expect(terminal.output().match(/: The wish states no size across\./g)).toHaveLength(starterCatalogue.panels.length);
});

test('find of what is neither ends with 2 and prints nothing', () => {
  const terminal = givenTerminal({ 'wish.json': '{}' });
  expect(find.run(plain, terminal)).toBe(2);
  expect(terminal.output()).toBe('');
  expect(terminal.complaints()).toContain('reason: not-a-plan');
});
