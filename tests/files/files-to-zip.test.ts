import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inflateRawSync } from 'node:zlib';
import { afterEach, expect, test, vi } from 'vitest';
import { filesToZip } from '../../src/files/files-to-zip';

const files = [
  { name: 'read-me.txt', bytes: new TextEncoder().encode('line\r\n'.repeat(500)) },
  { name: 'pictures/N1.png', bytes: Uint8Array.from({ length: 1000 }, (_, i) => (i * 131) % 251) },
  { name: 'empty.txt', bytes: new Uint8Array(0) },
];

afterEach(() => vi.useRealTimers());

/** Every file by name, read by the letter of APPNOTE.TXT 6.3, 4.3.12 and 4.3.7, with none of our code. */
function readBack(bytes: Uint8Array): Record<string, Buffer> {
  const zip = Buffer.from(bytes);
  const end = zip.lastIndexOf('PK\u0005\u0006');
  const found: Record<string, Buffer> = {};
  for (let at = zip.readUInt32LE(end + 16), i = 0; i < zip.readUInt16LE(end + 10); i++) {
    const [method, size, nameBytes] = [zip.readUInt16LE(at + 10), zip.readUInt32LE(at + 20), zip.readUInt16LE(at + 28)];
    const local = zip.readUInt32LE(at + 42);
    const begin = local + 30 + zip.readUInt16LE(local + 26) + zip.readUInt16LE(local + 28);
    const data = zip.subarray(begin, begin + size);
    found[zip.toString('utf8', at + 46, at + 46 + nameBytes)] = method === 8 ? inflateRawSync(data) : data;
    at += 46 + nameBytes + zip.readUInt16LE(at + 30) + zip.readUInt16LE(at + 32);
  }
  return found;
}

test('filesToZip keeps every file under its name, in order', () => {
  const read = readBack(filesToZip(files));
  expect(Object.keys(read)).toEqual(files.map(({ name }) => name));
  for (const { name, bytes } of files) expect(read[name]!.equals(Buffer.from(bytes))).toBe(true);
});

test('filesToZip packs text and leaves pictures, which are packed already', () => {
  const bytes = filesToZip(files);
  expect(bytes.length).toBeLessThan(1000 + 1000);
  expect(Buffer.from(bytes).indexOf(Buffer.from(files[1]!.bytes))).toBeGreaterThan(0);
});

test('filesToZip gives the same bytes whenever it is called', () => {
  vi.useFakeTimers({ now: Date.UTC(2024, 1, 29, 12) });
  const then = filesToZip(files);
  vi.setSystemTime(Date.UTC(2031, 6, 1));
  expect(Buffer.from(filesToZip(files)).equals(Buffer.from(then))).toBe(true);
});

test('filesToZip gives the same bytes in another time zone', () => {
  const before = process.env.TZ;
  const here = filesToZip(files);
  process.env.TZ = 'Pacific/Auckland';
  try {
    expect(Buffer.from(filesToZip(files)).equals(Buffer.from(here))).toBe(true);
  } finally {
    if (before === undefined) delete process.env.TZ;
    else process.env.TZ = before;
  }
});

const hasUnzip = spawnSync('unzip', ['-v']).status === 0;

test.skipIf(!hasUnzip)('filesToZip passes the test of unzip, where the machine has it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'zip-'));
  try {
    writeFileSync(join(folder, 'set.zip'), filesToZip(files));
    expect(spawnSync('unzip', ['-t', join(folder, 'set.zip')]).status).toBe(0);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
