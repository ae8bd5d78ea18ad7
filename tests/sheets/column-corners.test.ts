import { expect, it } from 'vitest';
import { columnCorners } from '../../src/sheets/column-corners';
import { stageFixture } from '../arbitraries/evaluation-fixture';

it('columnCorners gives front and back corners of a column, left and right as seen from inside, and the way out', () => {
  // A flat wall of 2 m about the origin, its back 90 mm behind it at greater y.
  const { walls } = stageFixture({ columns: 4, rows: 2, jointDeg: 0 });
  expect(columnCorners(walls[0]!, 2)).toEqual({
    frontLeft: { xMm: -500, yMm: 0 },
    frontRight: { xMm: 0, yMm: 0 },
    backLeft: { xMm: -500, yMm: 90 },
    backRight: { xMm: 0, yMm: 90 },
    outX: -0,
    outY: 1,
  });
});
