import { expect, test } from 'vitest';
import { circuitThings, runThings } from '../../../src/calc/compare/chain-things';
import { smallStage } from '../../cli/small-stage';

// Two panels, C1 R1 and C2 R1; the run enters at C2, the circuit at C1.
const { surfaces, runs, power } = smallStage;
const [run] = runs.results.runs;
const [circuit] = power.results.circuits;

test('runThings has each run by its port, with its panels in order, entry first', () => {
  const list = runThings(runs.results, surfaces, ['m0', 'm1']);
  expect(list.things).toEqual([{ name: '1-01', content: 'm1 m0', detail: '' }]);
  expect(list.sayContent(0)).toEqual(['2 panels: C2 R1 to C1 R1']);
  expect(list.sayDetail(0)).toEqual([]);
});

test('runThings has the return as detail', () => {
  const list = runThings({ ...runs.results, runs: [{ ...run!, returnPort: '1-02' }] }, surfaces, ['m0', 'm1']);
  expect(list.things[0]).toMatchObject({ content: 'm1 m0', detail: 'returns to 1-02' });
  expect(list.sayDetail(0)).toEqual(['returns to 1-02']);
});

test('circuitThings has each circuit by its name, with its panels and its leg', () => {
  const list = circuitThings(power.results, surfaces, ['m0', 'm1']);
  expect(list.things).toEqual([{ name: 'D1-01', content: 'm0 m1', detail: 'on L1' }]);
  expect(list.sayContent(0)).toEqual(['2 panels: C1 R1 to C2 R1']);
  const short = { ...power.results, circuits: [{ ...circuit!, leg: 'L2-L3' as const, start: 1, count: 1 }] };
  expect(circuitThings(short, surfaces, ['m0', 'm1']).things[0]).toMatchObject({ content: 'm1', detail: 'on L2-L3' });
  expect(circuitThings(short, surfaces, ['m0', 'm1']).sayContent(0)).toEqual(['1 panel: C2 R1']);
});
