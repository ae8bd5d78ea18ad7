import { evaluate } from 'mathjs';
import { expect, it } from 'vitest';
import { computeFaults } from '../../../src/calc/faults/compute-faults';
import { workFaults } from '../../../src/calc/faults/work-faults';
import { smallStage } from './small-stage';

const { passes: _, ...stage } = smallStage({ returnPorts: ['1B-02', null, null, null] });
const results = computeFaults({ ...stage, panels: [] });

it('workFaults prints shares that mathjs comes to as well', () => {
  const steps = workFaults(stage, results);
  // The node darkens all 12, whichever ends of a run are fed; one run of four comes back.
  expect(steps.map(({ figure, value }) => [figure, value])).toEqual([
    ['worst single failure of the stage', 1],
    ['worst failure of equipment on A', 1],
    ['runs with a return', 1 / 4],
  ]);
  for (const { expression, numbers, value } of steps) expect(evaluate(expression, { ...numbers })).toBe(value);
});

it('workFaults has nothing to work out where nothing can fail', () => {
  const nothing = { ...results, worst: [], surfaces: [], runs: 0, runsWithReturn: 0, worstCut: null };
  expect(workFaults({ surfaces: { total: 0 } }, nothing)).toEqual([]);
});
