import { expect, test } from 'vitest';
import { columnsSteps, lowerWall, narrowWall, rowsSteps } from '../../../../src/calc/levers/steps/shape-steps';
import { samplePlan } from '../../../arbitraries/sample-plans';

const plan = samplePlan('flat');
const wall = plan.walls[0]!;
const columns = (path: (typeof wall)['path']) => path.reduce((sum, segment) => sum + segment.columns, 0);

test('narrowWall takes columns from both ends in turn, and null when none would be left', () => {
  const path = [
    { ...wall.path[0]!, id: 'one', columns: 2 },
    { ...wall.path[0]!, id: 'two', columns: 3 },
    { ...wall.path[0]!, id: 'three', columns: 1 },
  ];
  // Three fewer of six: two from the right (segment three goes, two keeps 2), one from the left (one keeps 1).
  expect(narrowWall({ ...wall, path }, 3)!.path.map(({ id, columns: n }) => `${id} ${n}`)).toEqual(['one 1', 'two 2']);
  expect(narrowWall({ ...wall, path }, 6)).toBeNull();
});

test('lowerWall takes rows from the top band down', () => {
  const bands = [
    { ...wall.bands[0]!, id: 'low', rows: 3 },
    { ...wall.bands[0]!, id: 'high', rows: 1 },
  ];
  expect(lowerWall({ ...wall, bands }, 2)!.bands.map(({ id, rows }) => `${id} ${rows}`)).toEqual(['low 2']);
  expect(lowerWall({ ...wall, bands }, 4)).toBeNull();
});

test('columnsSteps and rowsSteps leave at least one, and none without a wall', () => {
  expect(columnsSteps(plan)).toHaveLength(columns(wall.path) - 1);
  expect(rowsSteps(plan).at(-1)!.to.value).toBe(1);
  expect(columnsSteps({ ...plan, walls: [] })).toEqual([]);
});
