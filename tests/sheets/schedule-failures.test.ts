import { expect, it } from 'vitest';
import { computeFaults } from '../../src/calc/faults/compute-faults';
import { scheduleFailures } from '../../src/sheets/schedule-failures';
import { smallStage } from '../calc/faults/small-stage';

const { passes: _, ...stage } = smallStage();
const schedule = scheduleFailures(computeFaults({ ...stage, panels: [] }));

it('scheduleFailures has a row for each of the worst, in their order', () => {
  expect(schedule.count).toBe(10);
  expect(schedule.row(0)).toEqual(['circuit D1-1', 12, 1, 'A\u00a0100\u00a0%', 12, 'distro 1, entry C1 R1']);
  // 9 of 12 panels hang on processor 1.
  expect(schedule.row(6)).toEqual(['processor 1', 9, 0.75, 'A\u00a075\u00a0%', 9, '3 ports, 1A-01 to 1B-01']);
  expect(schedule.columns).toHaveLength(schedule.row(0).length);
});

it('scheduleFailures never says that no per cent is lost where a panel is', () => {
  const surfaces = [{ surfaceId: 'w', letter: 'A', panels: 1, share: 1 / 1000 }];
  const one = {
    kind: 'panel',
    name: 'C1 R1',
    where: '',
    panels: 1,
    share: 0.001,
    surfaces,
    panelsWithoutReturns: 1,
  } as const;
  expect(scheduleFailures({ worst: [one] }).row(0)[3]).toBe('A\u00a01\u00a0%');
});
