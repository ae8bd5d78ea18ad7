import { expect, test } from 'vitest';
import { setZipTimes } from '../../src/files/set-zip-times';

/** One stored file 'a' with the content 'x', of 2 January 2026, 10:20:30, as APPNOTE.TXT lays it out. */
function smallZip(): Uint8Array<ArrayBuffer> {
  const time = [0x8f, 0x52]; // (10 << 11) | (20 << 5) | 15, little-endian
  const date = [0x22, 0x5c]; // (46 << 9) | (1 << 5) | 2
  const crc = [0x83, 0x16, 0xdc, 0x8c]; // CRC-32 of 'x'
  const sizes = [1, 0, 0, 0, 1, 0, 0, 0];
  const local = [0x50, 0x4b, 3, 4, 10, 0, 0, 0, 0, 0, ...time, ...date, ...crc, ...sizes, 1, 0, 0, 0, 0x61, 0x78];
  const central = [
    ...[0x50, 0x4b, 1, 2, 10, 0, 10, 0, 0, 0, 0, 0, ...time, ...date, ...crc, ...sizes],
    ...[1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0x61],
  ];
  const end = [0x50, 0x4b, 5, 6, 0, 0, 0, 0, 1, 0, 1, 0, central.length, 0, 0, 0, local.length, 0, 0, 0, 0, 0];
  return Uint8Array.from([...local, ...central, ...end]);
}

test('setZipTimes sets both times of a file to 1 January 1980, 00:00, and changes nothing else', () => {
  const before = smallZip();
  const after = setZipTimes(smallZip());
  const changed = [...after.keys()].filter((i) => after[i] !== before[i]);
  // Local header: bytes 10 to 13. Central header: it begins at 32, bytes 12 to 15 of it.
  expect(changed).toEqual([10, 11, 12, 13, 44, 45, 46, 47]);
  expect([...after.subarray(10, 14)]).toEqual([0, 0, 0x21, 0]);
  expect([...after.subarray(44, 48)]).toEqual([0, 0, 0x21, 0]);
});

test('setZipTimes refuses what is no ZIP, and one whose directory is broken', () => {
  expect(() => setZipTimes(Uint8Array.of(1, 2, 3))).toThrow('not a ZIP');
  const broken = smallZip();
  broken[32] = 0;
  expect(() => setZipTimes(broken)).toThrow('directory');
});
