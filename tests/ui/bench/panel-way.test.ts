import { expect, test } from 'vitest';
import type { Evaluation } from '../../../src/calc/evaluation';
import { ordinal, traceSelection, traceWay } from '../../../src/ui/bench/panel-way';
import { findSelection } from '../../../src/ui/state/find-selection';
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
  expect(titles[0]).toBe('Node N1');
  expect(titles.at(-1)).toBe(`Distro ${circuit.distro}`);
  // What can be picked on the way is there to be picked.
  for (const { picks } of way.stations) if (picks !== null) expect(findSelection(evaluation, picks)).not.toBeNull();
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
  ['1A-01', ['Node N1', 'Processor 1', 'Breakout 1A', 'Port 1A-01']],
  ['home run 1A-01', ['Node N1', 'Processor 1', 'Breakout 1A', 'Port 1A-01']],
  ['trunk 1A', ['Node N1', 'Processor 1', 'Breakout 1A']],
  ['processor 1', ['Node N1', 'Processor 1']],
  ['N1', ['Node N1', 'Processor 1']],
  ['D1-2', ['Circuit D1-2', 'L2', 'Distro 1']],
  ['power jumper C1 R1 to C1 R2', ['Circuit D1-1', 'L1', 'Distro 1']],
  ['distro 1', []],
  ['C3', []],
])('traceSelection of %s names what is on its way', (name, titles) => {
  const way = traceSelection(evaluation, findSelection(evaluation, name)!, format);
  expect(way.map(({ title }) => title)).toEqual(titles);
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
