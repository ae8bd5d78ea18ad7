import { expect, test } from 'vitest';
import { findSelection } from '../../../src/ui/state/find-selection';
import { fakeEvaluation, somePlan } from './fake-bench';

const evaluation = fakeEvaluation(somePlan);
const run = evaluation.runs.results.runs[1]!;
const circuit = evaluation.power.results.circuits[2]!;

test.each(['C3 R2', 'c3r2', 'A C3 R2', ' C3  R2 ', 'AC3R2'])('findSelection reads %s as the panel', (text) => {
  // Column after column, rows from the floor: 2 whole columns of 6, then the second panel.
  expect(findSelection(evaluation, text)).toEqual({ kind: 'panel', index: 13, name: 'C3 R2' });
});

test('findSelection reads a column, a port, a circuit and a processor', () => {
  expect(findSelection(evaluation, 'C3')).toMatchObject({ kind: 'column', column: 3, name: 'C3' });
  expect(findSelection(evaluation, run.port.toLowerCase())).toEqual({ kind: 'run', index: 1, name: run.port });
  expect(findSelection(evaluation, `port ${run.port}`)).toMatchObject({ kind: 'run', index: 1 });
  expect(findSelection(evaluation, circuit.name)).toEqual({ kind: 'circuit', index: 2, name: circuit.name });
  expect(findSelection(evaluation, 'processor 1')).toMatchObject({ kind: 'zone', index: 0 });
});

test('what findSelection names, it finds again', () => {
  for (const text of ['C3 R2', 'C3', run.port, circuit.name, 'processor 1']) {
    const found = findSelection(evaluation, text);
    expect(findSelection(evaluation, found!.name)).toEqual(found);
  }
});

test.each(['', 'C0 R1', 'C13 R1', 'C1 R7', 'B C1 R1', '99-01', 'processor 99', 'nonsense'])(
  'findSelection finds nothing called %j',
  (text) => {
    expect(findSelection(evaluation, text)).toBeNull();
  },
);
