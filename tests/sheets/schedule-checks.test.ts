import { expect, test } from 'vitest';
import { scheduleChecks } from '../../src/sheets/schedule-checks';
import { checkOf } from '../cli/small-stage';
import { cells } from './cells';

const metric = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' } as const;

test('scheduleChecks lists what stops a plan, then what wants a look, and nothing else', () => {
  const schedule = scheduleChecks(
    [
      checkOf({ id: 'a.watch', severity: 'watch', sentence: 'Look at it.' }),
      checkOf({ id: 'a.pass', severity: 'pass', sentence: 'All stands.' }),
      checkOf({ id: 'a.stop', severity: 'stop', sentence: 'It cannot stand.' }),
      checkOf({ id: 'a.offer', severity: 'offer', sentence: 'Could be more.' }),
    ],
    metric,
  );
  expect(schedule.count).toBe(2);
  expect(cells(schedule, 0)).toMatchObject({ mark: 'stops it', sentence: 'It cannot stand.' });
  expect(cells(schedule, 1)).toMatchObject({ mark: 'look at it', sentence: 'Look at it.' });
});

test('scheduleChecks writes figures into sentences and names the places', () => {
  const check = checkOf({
    severity: 'stop',
    measured: 2600,
    limit: 2100,
    unit: 'mm',
    sentence: 'Entry at {measured}, reach {limit}.',
    where: [{ kind: 'port', name: '1A-03' }],
  });
  expect(cells(scheduleChecks([check], metric), 0)).toMatchObject({
    sentence: 'Entry at 2.60 m, reach 2.10 m.',
    where: '1A-03',
  });
});
