import { expect, test } from 'vitest';
import type { Evaluation } from '../../../src/calc/evaluation';
import { ordinal, traceWay } from '../../../src/ui/bench/panel-way';
import type { Format } from '../../../src/ui/widgets/use-format';
import { fakeEvaluation, somePlan } from '../state/fake-bench';

const format: Format = (value, unit) => `${value} ${unit}`;
const evaluation = {
  ...fakeEvaluation(somePlan),
  ports: { results: { surfaces: [] }, checks: [], working: [] },
} as unknown as Evaluation;

test('traceWay of a panel names its processor, port, place, circuit and leg as the evaluation has them', () => {
  const index = 13;
  const run = evaluation.runs.results.runs[evaluation.runs.results.runOf[index]!]!;
  const circuit = evaluation.power.results.circuits[evaluation.power.results.circuitOf[index]!]!;
  const zone = evaluation.zones.results.zones[run.zone]!;
  const place = [...evaluation.runs.results.order.subarray(run.start, run.start + run.count)].indexOf(index) + 1;
  const way = traceWay(evaluation, index, format)!;
  expect(way.name).toBe('C3 R2');
  const titles = way.stations.map(({ title }) => title);
  expect(titles).toContain(`Processor ${zone.processor}`);
  expect(titles).toContain(`Port ${run.port}`);
  expect(titles).toContain(`${ordinal(place)} of ${run.count}`);
  expect(titles).toContain(`Circuit ${circuit.name}`);
  expect(titles).toContain(circuit.leg);
});

test('traceWay of a panel on no run and no circuit says so', () => {
  const unwired = {
    ...evaluation,
    runs: { ...evaluation.runs, results: { ...evaluation.runs.results, runOf: new Int32Array(72).fill(-1) } },
    power: { ...evaluation.power, results: { ...evaluation.power.results, circuitOf: new Int32Array(72).fill(-1) } },
  };
  expect(traceWay(unwired, 13, format)?.stations.map(({ title }) => title)).toEqual(['No run', 'No circuit']);
});

test('traceWay of a panel that is not there is null', () => {
  expect(traceWay(evaluation, 9999, format)).toBeNull();
});

test.each([
  [1, '1st'],
  [2, '2nd'],
  [3, '3rd'],
  [4, '4th'],
  [11, '11th'],
  [12, '12th'],
  [21, '21st'],
])('ordinal of %s is %s', (place, words) => {
  expect(ordinal(place)).toBe(words);
});
