import { expect, test } from 'vitest';
import { find } from '../../src/cli/find';
import { givenTerminal } from './given-terminal';

const call = { file: 'wish.json', options: new Set<string>() };
const wish = {
  hall: { lengthMm: 30_000, widthMm: 26_000, clearHeightMm: 10_000, walkwayMm: 1200 },
  vehicle: { widthMm: 2600, heightMm: 4000 },
  wall: { form: 'ring', acrossMm: 20_000, heightMm: 6000, openingMm: 4000 },
  camerasAtOnce: 1,
  budget: null,
  coolingW: null,
  stock: [],
  note: '',
};

test('find of a wish alone lists the starter catalogue, in eighty columns', () => {
  const terminal = givenTerminal({ 'wish.json': JSON.stringify(wish) });
  expect(find.run(call, terminal)).toBe(0);
  expect(terminal.output()).toMatch(/columns/i);
  expect(terminal.output()).not.toMatch(/NaN|Infinity|undefined/);
  for (const line of terminal.output().split('\n')) expect(line.length).toBeLessThanOrEqual(80);
});

test('find of a file that is neither a wish nor a plan ends with 2 and says why', () => {
  const terminal = givenTerminal({ 'wish.json': '{}' });
  expect(find.run(call, terminal)).toBe(2);
  expect(terminal.complaints()).not.toBe('');
});
