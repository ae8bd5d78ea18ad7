import { expect, test } from 'vitest';
import { compareMerit } from '../../../src/calc/runs/compare-merit';
import type { ZoneWiring } from '../../../src/calc/runs/search/zone-wiring';
import type { Priority } from '../../../src/plan/signal';

const wiring = (rest: Partial<ZoneWiring>): ZoneWiring => ({
  way: { kind: 'columns' },
  order: new Int32Array(0),
  start: new Int32Array(1),
  ports: 18,
  pixels: new Float64Array(0),
  tooLarge: new Int32Array(0),
  fewestPanels: 1,
  mostPanels: 1,
  fullestPixels: 100,
  fullestShare: 1,
  entriesOutOfReach: 0,
  highestEntryMm: 0,
  figures: 2,
  cableMm: 1000,
  ...rest,
});
const isBetter = (better: Partial<ZoneWiring>, worse: Partial<ZoneWiring>, priority: Priority = 'repeats') => {
  const compare = compareMerit({ priority, portsThere: 20, portsABreakout: 10 });
  return compare(wiring(better), wiring(worse)) < 0 && compare(wiring(worse), wiring(better)) > 0;
};

// Handbook, chapter 7: what a good wiring is, in this order (common practice, no source). Each is better on one count and
// worse on all that come after it.
test.each([
  ['entries in reach', {}, { entriesOutOfReach: 1 }, { ports: 30, figures: 9, fullestPixels: 900, cableMm: 9000 }],
  ['ports that are there', { ports: 20 }, { ports: 21 }, { figures: 9, fullestPixels: 900, cableMm: 9000 }],
  ['fewer breakouts', { ports: 10 }, { ports: 11 }, { figures: 9, fullestPixels: 900, cableMm: 9000 }],
  ['what repeats', { figures: 1 }, {}, { ports: 19, fullestPixels: 900, cableMm: 9000 }],
  ['even load', { fullestPixels: 99 }, {}, { ports: 19, cableMm: 9000 }],
  ['short cable', { cableMm: 999 }, {}, { ports: 19 }],
  ['fewer ports', { ports: 17 }, {}, {}],
] as const)('compareMerit puts %s before what comes after', (_, better, worse, burden) => {
  expect(isBetter({ ...burden, ...better }, worse)).toBe(true);
});

test.each([
  ['fewest-ports', { ports: 17 }],
  ['most-free', { fullestPixels: 99 }],
  ['shortest-cable', { cableMm: 999 }],
] as const)('compareMerit puts %s first where the user does, once it fits', (priority, better) => {
  const burden = { ports: 20, figures: 9, fullestPixels: 900, cableMm: 9000 };
  const plain = { ports: 19 };
  expect(isBetter({ ...burden, ...better }, plain, priority)).toBe(true);
  expect(isBetter({ ...burden, ...better, entriesOutOfReach: 1 }, plain, priority)).toBe(false);
});

test('compareMerit has no breakouts to count where there are none, and no preference among equals', () => {
  const compare = compareMerit({ priority: 'repeats', portsThere: 20, portsABreakout: 0 });
  expect(compare(wiring({}), wiring({}))).toBe(0);
  expect(compare(wiring({ ports: 2, figures: 2 }), wiring({ ports: 19, figures: 1 }))).toBeGreaterThan(0);
});
