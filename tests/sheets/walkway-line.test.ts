import { expect, it } from 'vitest';
import { walkwayLine } from '../../src/sheets/walkway-line';
import { stageFixture } from '../arbitraries/evaluation-fixture';

it('walkwayLine runs behind the back of every column', () => {
  const flat = stageFixture({ columns: 2, rows: 1, jointDeg: 0 }).walls[0]!;
  expect(walkwayLine(flat, 1000)).toEqual([-500, 0, 0, 500].map((xMm) => ({ xMm: expect.closeTo(xMm), yMm: 1090 })));
  const ring = stageFixture({ columns: 36, rows: 1, jointDeg: 10 }).walls[0]!;
  // Over flats 500 / (2 tan 5 deg) = 2857.5, 90 deep and 1200 behind; half a width aside.
  for (const point of walkwayLine(ring, 1200)) {
    expect(Math.hypot(point.xMm, point.yMm)).toBeCloseTo(Math.hypot(2857.513 + 1290, 250), 1);
  }
});
