import { expect, test } from 'vitest';
import reference from '../../../fixtures/reference/link-rates.json';
import { st2110Wire } from '../../../src/calc/links/st-2110-wire';

const rows = reference.st2110.filter(({ format }) => format.startsWith('RGB'));

// Source: fixtures/reference/link-rates.json, ST 2110-20 arithmetic in blocks of 1260 octets.
test.each(rows)('st2110Wire of $name, $format', (row) => {
  const [width, height, frames] = row.name.match(/\d+/g)!.map(Number);
  const stream = st2110Wire(
    { width: width!, height: height! },
    { frames: frames!, seconds: 1 },
    Number.parseInt(row.format.slice(4), 10),
  );
  expect(stream.octetsAFrame).toBe(row.octetsPerFrame);
  expect(stream.packetsAFrame).toBe(row.packetsPerFrame);
  expect(stream.wireBps / 1e9).toBeCloseTo(row.wireGbps, 6);
});

test('st2110Wire is held against three depths', () => {
  expect(rows).toHaveLength(3);
});

// 10 bit: 15 octets hold 4 pixels, so that 2807 pixels take as much as 2808.
test('st2110Wire widens a line to whole pixel groups', () => {
  const rate = { frames: 60, seconds: 1 };
  expect(st2110Wire({ width: 2807, height: 3 }, rate, 10)).toEqual(st2110Wire({ width: 2808, height: 3 }, rate, 10));
  expect(st2110Wire({ width: 2807, height: 3 }, rate, 10).octetsAFrame).toBe(702 * 15 * 3);
});
