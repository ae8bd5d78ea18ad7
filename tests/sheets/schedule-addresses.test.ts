import { expect, test } from 'vitest';
import { scheduleAddresses } from '../../src/sheets/schedule-addresses';

const device = { device: 'N1', kind: 'node', address: '10.20.0.11', switch: 1, switchPort: 4 } as const;

test('scheduleAddresses gives address, network (RFC 4632) and port of every device', () => {
  const schedule = scheduleAddresses(28, [
    device,
    { ...device, device: 'N2', address: null, switch: 2, switchPort: 2 },
  ]);
  // A /28 has 16 addresses: 11 lies in the first of them.
  expect(schedule.row(0)).toEqual(['N1', '10.20.0.11', '10.20.0.0/28', 1, 4]);
  expect(schedule.row(1)).toEqual(['N2', 'none left', null, 2, 2]);
  expect(schedule.totals).toEqual(['2 devices', null, null, '2 switches', null]);
});
