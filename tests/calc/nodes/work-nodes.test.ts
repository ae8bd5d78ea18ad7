import { expect, test } from 'vitest';
import { workNodes } from '../../../src/calc/nodes/work-nodes';
import { expectStepsHold } from '../ports/expect-steps-hold';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainMode, plainResults, zonesOf } from './plain-nodes';

const wall = plainSurface({ columns: 10, bands: [{ type: plainType(100), rows: 8 }] });

test('workNodes works out the canvas of each surface and its delay', () => {
  const { inputs, results } = plainResults({ tables: [wall], zones: zonesOf(wall, 4), base: plainMode(25) });
  const steps = workNodes(inputs, results);
  expectStepsHold(steps);
  expect(steps.map(({ figure, value }) => [figure, value])).toEqual([
    ['canvas of N1', 320_000],
    ['blank pixels of N1', 0],
    // Tracking 8 ms, render 2, sync 1, processor 1 and panel 1 frames of 40 ms, link 1 ms: 209 ms, 5.225 frames.
    ['delay of A', 0.209],
    ['delay of A', 5.225],
    // Four nodes with the spare one, three processors, a camera and a tracker: nine devices on splitters of eight outlets.
    ['splitters of the sync', 2],
  ]);
});

test('workNodes leaves out a delay that nobody stated', () => {
  const { inputs, results } = plainResults({
    tables: [wall],
    zones: [],
    delay: { steps: [], mostMs: null },
  });
  expect(workNodes(inputs, results)).toEqual([]);
});
