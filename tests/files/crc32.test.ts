import { crc32 as zlibCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { crc32 } from '../../src/files/crc32';

test('crc32 of the digits 1 to 9 is the published check value', () => {
  // CRC-32/ISO-HDLC in the catalogue of parametrised CRC algorithms: check 0xcbf43926. From memory.
  expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
});

test('crc32 agrees with zlib on any bytes', () => {
  // zlib's is part of Node from 20.15 on.
  fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => crc32(bytes) === zlibCrc32(bytes)));
});
