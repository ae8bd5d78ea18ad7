import { expect, test } from 'vitest';
import {
  breakoutsOf,
  compareFit,
  compareMerit,
  compareRank,
  portsTooMany,
} from '../../../../src/calc/runs/search/order-of-merit';
import type { ZoneWiring } from '../../../../src/calc/runs/search/zone-wiring';
import { columnRuns, plainWiring } from '../column-wiring';
import { aPort, block } from './block-of-panels';

const there = { portsThere: 20, portsABreakout: 8 };
const plain = plainWiring(block(2, 2), aPort(4), { kind: 'columns' }, columnRuns(block(2, 2), aPort(4)));
const wiring = (rest: Partial<ZoneWiring> = {}): ZoneWiring => ({
  ...plain,
  ports: 16,
  entriesOutOfReach: 0,
  figures: 3,
  fullestPixels: 400,
  cableMm: 9000,
  ...rest,
});
const best = (
  a: Partial<ZoneWiring>,
  b: Partial<ZoneWiring>,
  priority: Parameters<typeof compareMerit>[2] = 'repeats',
) => Math.sign(compareMerit(wiring(a), wiring(b), priority, there));

test('compareMerit: an entry within reach before all, then ports that are there, whatever the user puts first', () => {
  for (const priority of ['repeats', 'fewest-ports', 'most-free', 'shortest-cable'] as const) {
    expect(best({ ports: 40, figures: 9 }, { entriesOutOfReach: 1 }, priority)).toBe(-1);
    expect(best({ ports: 20, fullestPixels: 999, cableMm: 99_000 }, { ports: 21 }, priority)).toBe(-1);
  }
});

test('compareMerit: then what the user puts first', () => {
  const fewer = { ports: 15, figures: 9, fullestPixels: 999, cableMm: 99_000 };
  expect(best(fewer, {}, 'fewest-ports')).toBe(-1);
  expect(best({ fullestPixels: 300, ports: 20, figures: 9 }, {}, 'most-free')).toBe(-1);
  expect(best({ cableMm: 8000, ports: 20, figures: 9 }, {}, 'shortest-cable')).toBe(-1);
});

test('compareMerit: then breakouts, figures, even load, cable, and ports at last', () => {
  expect(best({ figures: 9 }, { ports: 17, figures: 1 })).toBe(-1);
  expect(best({ figures: 2, fullestPixels: 999 }, {})).toBe(-1);
  expect(best({ fullestPixels: 399, cableMm: 99_000 }, {})).toBe(-1);
  expect(best({ cableMm: 8999 }, { ports: 15 })).toBe(-1);
  expect(best({ ports: 15 }, {})).toBe(-1);
  expect(best({}, {})).toBe(0);
});

test('compareRank and compareFit leave the rest undecided', () => {
  expect(compareRank(wiring({ figures: 1 }), wiring(), 'repeats', there)).toBe(0);
  expect(compareRank(wiring(), wiring({ ports: 17 }), 'repeats', there)).toBeLessThan(0);
  expect(compareFit(wiring(), wiring({ ports: 17 }), there)).toBe(0);
});

test('breakoutsOf rounds up, and without breakouts counts processors; portsTooMany is never below 0', () => {
  expect([breakoutsOf({ ports: 16 }, there), breakoutsOf({ ports: 17 }, there)]).toEqual([2, 3]);
  expect(breakoutsOf({ ports: 21 }, { portsThere: 20 })).toBe(2);
  expect([portsTooMany(wiring(), there), portsTooMany(wiring({ ports: 23 }), there)]).toEqual([0, 3]);
});
