import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readWish } from '../../src/cli/read-wish';
import { givenTerminal } from './given-terminal';

test('readWish takes a plan as it is', () => {
  const terminal = givenTerminal({ 'plan.json': readFileSync('fixtures/plans/flat.json', 'utf8') });
  expect(readWish('plan.json', terminal)?.walls).toHaveLength(1);
});

test('readWish of a wish with an unknown field gives null and names the field', () => {
  const terminal = givenTerminal({ 'wish.json': '{"hall":{},"wall":{},"colour":1}' });
  expect(readWish('wish.json', terminal)).toBeNull();
  expect(terminal.complaints()).toMatch(/wish/);
});

test('readWish of text that is no JSON gives null', () => {
  expect(readWish('wish.json', givenTerminal({ 'wish.json': '{"hall"' }))).toBeNull();
});
