import { expect, test } from 'vitest';
import { bestOfWay } from '../../../src/calc/runs/best-of-way';
import type { ZoneWiring } from '../../../src/calc/runs/search/zone-wiring';

const wiring = (rest: Partial<ZoneWiring>): ZoneWiring => ({
  way: { kind: 'columns' },
  order: new Int32Array(0),
  start: new Int32Array(1),
  ports: 10,
  pixels: new Float64Array(0),
  tooLarge: new Int32Array(0),
  fewestPanels: 1,
  mostPanels: 1,
  fullestPixels: 100,
  fullestShare: 1,
  entriesOutOfReach: 0,
  highestEntryMm: 0,
  figures: 2,
  figureCodes: [1, 2],
  cableMm: 1000,
  ...rest,
});
const plain = wiring({});

test('bestOfWay of none is null', () => {
  expect(bestOfWay([], 20)).toBeNull();
});

// In order of weight: each is better on one count and worse on all counts after it.
test.each([
  ['ports there', { ports: 12 }, { ports: 10, entriesOutOfReach: 9, figures: 9, fullestPixels: 900, cableMm: 9000 }],
  ['entries in reach', { entriesOutOfReach: 1 }, { ports: 11, figures: 9, fullestPixels: 900, cableMm: 9000 }],
  ['fewer ports', { ports: 10 }, { ports: 9, figures: 9, fullestPixels: 900, cableMm: 9000 }],
  ['fewer figures', {}, { figures: 1, fullestPixels: 900, cableMm: 9000 }],
  ['an emptier port', {}, { fullestPixels: 99, cableMm: 9000 }],
  ['less cable', {}, { cableMm: 999 }],
] as const)('bestOfWay puts %s first', (_, worse, better) => {
  const [a, b] = [wiring(worse), wiring(better)];
  expect(bestOfWay([a, b], 11)).toBe(b);
  expect(bestOfWay([b, a], 11)).toBe(b);
});

test('bestOfWay keeps the first of equals', () => {
  expect(bestOfWay([plain, wiring({})], 20)).toBe(plain);
});
