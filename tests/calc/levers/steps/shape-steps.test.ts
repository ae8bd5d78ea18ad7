import { expect, test } from 'vitest';
import { columnsSteps, lowerWall, rowsSteps } from '../../../../src/calc/levers/steps/shape-steps';
import type { Plan } from '../../../../src/plan/plan';
import { samplePlan } from '../../../arbitraries/sample-plans';

const plan = samplePlan('flat');
const wall = plan.walls[0]!;
const columns = (path: (typeof wall)['path']) => path.reduce((sum, segment) => sum + segment.columns, 0);

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

test('columnsSteps leave what was changed by hand with its panels, two columns from the left among them', () => {
  const at = { surfaceId: wall.id, segmentId: wall.path[0]!.id, column: 6, row: 2 };
  const elsewhere = { ...at, surfaceId: 'other' };
  const changed: Plan = {
    ...plan,
    handChanges: [
      { kind: 'entry', id: 'one', at },
      { kind: 'cut', id: 'two', from: at, to: { ...at, column: 7 } },
      { kind: 'entry', id: 'three', at: elsewhere },
    ],
  };
  const fieldsOf = (count: number) => {
    const { command } = columnsSteps(changed)[count - 1]!;
    return command.name === 'set-fields' ? command.args.fields : [];
  };
  // One column fewer goes on the right and moves nothing; of four, two go on the left.
  expect(fieldsOf(1).map(({ path }) => path)).toEqual([['walls', 0]]);
  expect(fieldsOf(4)[1]).toEqual({
    path: ['handChanges'],
    value: [
      { kind: 'entry', id: 'one', at: { ...at, column: 4 } },
      { kind: 'cut', id: 'two', from: { ...at, column: 4 }, to: { ...at, column: 5 } },
      { kind: 'entry', id: 'three', at: elsewhere },
    ],
  });
});
