import { csvParse } from 'd3-dsv';
import { expect, test } from 'vitest';
import { scheduleToDataCsv } from '../../src/files/schedule-to-data-csv';
import { smallSchedule } from './small-schedule';

test('scheduleToDataCsv is headed by keys without units, and has no totals and no byte order mark', () => {
  const schedule = smallSchedule([['Panel, 500', 12, 500.5, null, 0.5]], ['All', 12, null, null, null]);
  const text = scheduleToDataCsv(schedule);
  expect(text.split('\r\n')).toEqual([
    schedule.columns.map(({ key }) => key).join(','),
    '"Panel, 500",12,500.5,,0.5',
    '',
  ]);
  expect(csvParse(text)).toHaveLength(1);
});
