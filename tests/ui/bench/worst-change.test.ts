import { expect, test } from 'vitest';
import type { Check, Severity } from '../../../src/calc/chapter';
import { findWorstChange } from '../../../src/ui/bench/worst-change';

const check = (id: string, severity: Severity) => ({ id, severity }) as Check;

test('a check that turned worse is said, the worst of them first, with how many more', () => {
  const before = [check('a', 'pass'), check('b', 'pass'), check('c', 'stop')];
  const after = [check('a', 'watch'), check('b', 'stop'), check('c', 'stop')];
  expect(findWorstChange(before, after)).toMatchObject({ kind: 'worse', check: { id: 'b' }, more: 1 });
});

test('a new check counts as one that passed before', () => {
  expect(findWorstChange([], [check('a', 'watch')])).toMatchObject({ kind: 'worse', check: { id: 'a' }, more: 0 });
  expect(findWorstChange([], [check('a', 'pass'), check('b', 'offer')])).toBeNull();
});

test('where nothing got worse, the worst that was cleared is said', () => {
  const before = [check('a', 'watch'), check('b', 'stop')];
  expect(findWorstChange(before, [check('a', 'pass')])).toMatchObject({ kind: 'cleared', check: { id: 'b' }, more: 1 });
});

test('where no check turned, nothing is said', () => {
  const checks = [check('a', 'stop'), check('b', 'offer')];
  expect(findWorstChange(checks, checks)).toBeNull();
  expect(findWorstChange(checks, [check('a', 'stop'), check('b', 'pass')])).toBeNull();
});
