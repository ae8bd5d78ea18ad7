import { expect, test } from 'vitest';
import { describeSelection } from '../../../src/ui/bench/describe-selection';
import { findSelection } from '../../../src/ui/state/find-selection';
import { fakeEvaluation, somePlan } from '../state/fake-bench';

const evaluation = fakeEvaluation(somePlan);
const format = (value: number | null, unit: string) => `${value} ${unit}`;
const say = (name: string) => describeSelection(evaluation, findSelection(evaluation, name)!, format);

test('a port says its panels and its entry', () => {
  const run = evaluation.runs.results.runs[0]!;
  expect(say(run.port)).toMatch(new RegExp(`^${run.count} panels, .* entry C\\d+ R\\d+`));
});

test('a circuit says its panels and its leg, a zone its columns and rows, a column its panels', () => {
  const circuit = evaluation.power.results.circuits[0]!;
  expect(say(circuit.name)).toContain(`on ${circuit.leg}`);
  expect(say('processor 1')).toContain('columns 1 to ');
  expect(say('C3')).toMatch(/^6 panels on /);
});

test('a part of the wiring says where it is', () => {
  expect(say('home run 1A-01')).toMatch(/^at port 1A-01, entry C\d+ R\d+$/);
  expect(say('N1')).toBe('processor 1');
});

test('what is gone has no words', () => {
  expect(describeSelection(evaluation, { kind: 'run', index: 999, name: 'x' }, format)).toBeNull();
});
