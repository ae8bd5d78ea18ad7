import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readWish } from '../../src/cli/read-wish';
import { starterCatalogue } from '../../src/plan/catalogue/starter-catalogue';
import { givenTerminal } from './given-terminal';

const read = (text: string) => {
  const terminal = givenTerminal({ 'wish.json': text });
  return { plan: readWish('wish.json', terminal), complaints: terminal.complaints() };
};

test('readWish of a plan gives the plan', () => {
  const { plan } = read(readFileSync('fixtures/plans/ring-feet.json', 'utf8'));
  expect(plan?.lengths).toBe('feet');
  expect(plan?.walls.length).toBeGreaterThan(0);
});

test('readWish of a wish alone gives a plan with the starter catalogue and no wall', () => {
  const { plan } = read('{"wall": {"acrossMm": 20000, "heightMm": 6000}, "hall": {"lengthMm": 30000}}');
  expect(plan?.catalogue).toEqual(starterCatalogue);
  expect(plan?.walls).toEqual([]);
  expect(plan?.wish.wall).toEqual({ form: 'ring', acrossMm: 20000, heightMm: 6000, openingMm: null });
});

test('readWish leaves what a wish does not say as nobody stated it', () => {
  const { plan } = read('{"wall": {"acrossMm": 20000, "heightMm": 6000}, "hall": {"lengthMm": 30000}}');
  expect(plan?.wish.hall).toMatchObject({ lengthMm: 30000, widthMm: null, clearHeightMm: null });
  expect(plan?.wish.budget).toBeNull();
});

test.each([
  ['{"wall": {"acrossMm": -1}}', 'invalid', 'wish.wall.acrossMm'],
  ['{"wall": {"acrossMm": "20 m"}}', 'invalid', 'wish.wall.acrossMm'],
  ['{"wall": 20000}', 'invalid', 'wish.wall'],
  ['{"wall": {"diameterMm": 20000}}', 'invalid', 'wish.wall.diameterMm'],
  ['{"wall": {}, "halls": {}}', 'invalid', 'wish.halls'],
  ['{"wall": {}, "__proto__": {}}', 'invalid', 'wish.__proto__'],
  ['{"colour": "red"}', 'not-a-plan', null],
  ['{}', 'not-a-plan', null],
  ['[{"wall": {}}]', 'not-a-plan', null],
  ['null', 'not-a-plan', null],
  ['{"wall": ', 'cut-short', null],
])('readWish of %s says %s and where', (text, reason, path) => {
  const { plan, complaints } = read(text);
  expect(plan).toBeNull();
  expect(complaints).toContain(`reason: ${reason}\n`);
  if (path !== null) expect(complaints).toContain(`path: ${path}\n`);
});

test('readWish refuses a wish that is nested without end', () => {
  const { complaints } = read(`{"wall": ${'['.repeat(100_000)}${']'.repeat(100_000)}}`);
  expect(complaints).toContain('reason: too-deep\n');
});
