import { expect, test } from 'vitest';
import { panelsMarked } from '../../../src/ui/state/panels-marked';
import { panelsNamed } from '../../../src/ui/state/panels-named';
import { fakeEvaluation, somePlan } from './fake-bench';

// 12 columns of 6 panels; panel 13 is C3 R2.
const evaluation = fakeEvaluation(somePlan);
const { order, runs, runOf } = evaluation.runs.results;

test('panelsMarked marks the panel, its run or its column', () => {
  const run = runs[runOf[13]!]!;
  expect(panelsMarked(evaluation, 'panel', 13)).toEqual([13]);
  expect(panelsMarked(evaluation, 'run', 13)).toEqual([...order.subarray(run.start, run.start + run.count)]);
  expect(panelsMarked(evaluation, 'column', 13)).toEqual([12, 13, 14, 15, 16, 17]);
});

test('panelsMarked of a panel on no run marks it alone, of none nothing', () => {
  const results = { ...evaluation.runs.results, runOf: new Int32Array(72).fill(-1) };
  expect(panelsMarked({ ...evaluation, runs: { ...evaluation.runs, results } }, 'run', 13)).toEqual([13]);
  expect(panelsMarked(evaluation, 'panel', 9999)).toEqual([]);
});

test('panelsNamed gives what hangs on a name', () => {
  expect(panelsNamed(evaluation, 'c3 r2')).toEqual([13]);
  expect(panelsNamed(evaluation, 'C1')).toEqual([0, 1, 2, 3, 4, 5]);
  expect(panelsNamed(evaluation, 'N1')).toHaveLength(72);
  expect(panelsNamed(evaluation, 'nothing')).toEqual([]);
});
