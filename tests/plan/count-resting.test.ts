import { expect, test } from 'vitest';
import { countResting } from '../../src/plan/count-resting';
import { samplePlan } from './sample-plan';

const { walls, handChanges } = samplePlan('version-2');
const wall = walls[0]!;

test('countResting finds nothing where every anchor has its panel', () => {
  expect(countResting(wall, handChanges)).toEqual({ handChanges: 0, holes: 0 });
});

test('countResting counts what has lost its segment, column or row, once each', () => {
  // 'right' goes: the join from left to right and the way at right rest. Changes on ceilings are no business of a wall.
  expect(countResting({ ...wall, path: [wall.path[0]!] }, handChanges)).toEqual({ handChanges: 2, holes: 0 });
  // 'left' is cut to one column: cut, join and the door rest.
  const short = { ...wall.path[0]!, columns: 1 };
  expect(countResting({ ...wall, path: [short, wall.path[1]!] }, handChanges)).toEqual({ handChanges: 2, holes: 1 });
  // One row left: the cut to row 2 and the join in row 3 rest.
  const low = { ...wall, bands: [{ ...wall.bands[0]!, rows: 1 }] };
  expect(countResting(low, handChanges)).toEqual({ handChanges: 2, holes: 0 });
});
