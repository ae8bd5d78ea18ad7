import { expect, test } from 'vitest';
import { ipAddress } from '../../src/plan/addresses';

// RFC 791: four octets, each 0 to 255.
test.each(['0.0.0.0', '10.20.0.11', '192.168.1.255', '255.255.255.255'])('%s is an address', (text) => {
  expect(ipAddress.safeParse(text).success).toBe(true);
});

test.each(['', '10.20.0', '10.20.0.256', '10.20.0.11.5', '10.20.0.-1', '10.020.0.1', 'ten.0.0.1', '10.0.0.1 '])(
  '%j is none',
  (text) => {
    expect(ipAddress.safeParse(text).success).toBe(false);
  },
);
