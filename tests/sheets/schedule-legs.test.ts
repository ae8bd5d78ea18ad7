import { expect, it } from 'vitest';
import { scheduleLegs } from '../../src/sheets/schedule-legs';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { cells } from './cells';

const { power } = stageFixture({ columns: 3, rows: 2, jointDeg: 0 });

it('scheduleLegs lists the service first, then each distro, with what is used of a limit', () => {
  const schedule = scheduleLegs({
    power: {
      ...power,
      legs: [{ leg: 'L1', currentA: 120, limitA: 400 }],
      distros: [{ number: 2, distroId: 'd', circuits: 2, legs: [{ leg: 'N', currentA: 5, limitA: null }] }],
    },
  });
  expect([cells(schedule, 0), cells(schedule, 1)]).toEqual([
    { where: 'Service', leg: 'L1', circuits: 3, current: 120, limit: 400, share: 0.3 },
    { where: 'Distro 2', leg: 'N', circuits: 2, current: 5, limit: 'not stated', share: null },
  ]);
  expect(schedule.panelOf(0)).toBeNull();
});

it('scheduleLegs gives no share of a limit of nothing', () => {
  const legs = [{ leg: 'L1' as const, currentA: 1, limitA: 0 }];
  expect(cells(scheduleLegs({ power: { ...power, legs } }), 0)).toMatchObject({ share: null });
});

it('scheduleLegs ends with the protective bonding, whatever is fed', () => {
  const schedule = scheduleLegs({ power: { ...power, legs: [], distros: [] } });
  expect(schedule.count).toBe(1);
  expect(cells(schedule, 0)).toMatchObject({ where: 'Bonding of frames, truss and racks', leg: 'PE', current: null });
});

it('scheduleLegs puts the service points between service and distros, with their distros, where there is more than one', () => {
  const legs = [{ leg: 'L1' as const, currentA: 90, limitA: 320 }];
  const distros = [1, 2, 3, 5].map((number) => ({ number, distroId: 'd', circuits: 10, legs }));
  const point = (name: string, on: readonly number[]) => ({ pointId: name, name, distros: on, legs });
  const two = [point('West', [1, 2, 3, 5]), point('East', [])];
  const schedule = scheduleLegs({ power: { ...power, legs, distros, points: two } });
  expect([cells(schedule, 1), cells(schedule, 2)]).toEqual([
    { where: 'West, distro 1-3, 5', leg: 'L1', circuits: 40, current: 90, limit: 320, share: 0.28125 },
    { where: 'East, no distro', leg: 'L1', circuits: 0, current: 90, limit: 320, share: 0.28125 },
  ]);
  const one = scheduleLegs({ power: { ...power, legs, distros, points: [two[0]!] } });
  expect(one.count).toBe(schedule.count - 2);
});
