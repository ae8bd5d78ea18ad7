import { expect, it } from 'vitest';
import { scheduleRings } from '../../src/sheets/schedule-rings';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { cells } from './cells';

const wall = stageFixture({ columns: 136, rows: 13, jointDeg: 2.5 }).walls[0]!;

it('scheduleRings says how a wall is set out', () => {
  const row = cells(scheduleRings([wall]), 0);
  expect(row).toMatchObject({
    wall: 'A Wall',
    columns: 136,
    rows: 13,
    joints: '135 of 2.5°',
    turns: 337.5,
    height: 6500,
  });
  // 144 columns of 0.5 m with 2.5 degrees are about 75 ft (22 860 mm) inside: common practice, no source.
  expect(Math.abs((row.insideDiameter as number) - 22_860)).toBeLessThan(100);
});

it('scheduleRings counts mixed joints, the most frequent first', () => {
  const jointDeg = Float64Array.of(0, 2.5, 5, 2.5, 2.5, 5);
  expect(cells(scheduleRings([{ ...wall, jointDeg }]), 0)).toMatchObject({ joints: '3 of 2.5°, 2 of 5°' });
});

it('scheduleRings leaves open what a flat wall or a single column has not', () => {
  const flat = stageFixture({ columns: 1, rows: 1, jointDeg: 0 }).walls[0]!;
  expect(cells(scheduleRings([flat]), 0)).toMatchObject({
    joints: 'none',
    insideDiameter: null,
    offCircle: null,
    opening: null,
  });
});
