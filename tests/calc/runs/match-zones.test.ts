import fc from 'fast-check';
import { expect, test } from 'vitest';
import { matchZones } from '../../../src/calc/runs/match-zones';
import { chooseWiring } from '../../../src/calc/runs/search/choose-wiring';
import type { ZoneWiring } from '../../../src/calc/runs/search/zone-wiring';
import type { ZoneAnswer } from '../../../src/calc/runs/zone-solver';
import type { WayOfWiring } from '../../../src/plan/hand-change';
import { aPort, block } from './search/block-of-panels';

const columns: WayOfWiring = { kind: 'columns' };
const folded = (wide: number): WayOfWiring => ({ kind: 'folded', wide });

/** A wiring by its figures of run; what is not given is alike. */
const peer = (way: WayOfWiring, figureCodes: readonly number[], rest: Partial<ZoneWiring> = {}): ZoneWiring => ({
  way,
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
  figures: figureCodes.length,
  figureCodes,
  cableMm: 1000,
  ...rest,
});
const answer = (...peers: ZoneWiring[]): ZoneAnswer => ({ chosen: peers[0]!, ways: peers, peers, least: 1 });
const union = (wirings: readonly ZoneWiring[]) => new Set(wirings.flatMap(({ figureCodes }) => figureCodes)).size;

test('matchZones: 13 columns and 10 columns of 14 rows, 12 panels a port, breakouts of eight ports, wire both above row 2', () => {
  // By hand. 13 columns: single columns of 12 up from row 3 take 13 ports, the 26 panels below in strips of five columns 3 more
  // (10, 10 and 6): 16 ports, two breakouts. 10 columns alone: up from row 5 in columns of 10 and below folded two by two takes
  // 15 ports, two breakouts, and leaves more free. But a crew that has wired the first knows columns of 12 and strips of five:
  // 10 + 2 ports, two breakouts, no figure that is new.
  const terms = { priority: 'repeats' as const, portsThere: 24, portsABreakout: 8 };
  const wide = chooseWiring(block(13, 14), aPort(12), terms);
  const narrow = chooseWiring(block(10, 14), aPort(12), terms);
  expect(narrow.chosen).toMatchObject({ way: { kind: 'split', aboveRow: 4, wide: 2 }, ports: 15 });
  const wirings = matchZones([wide, wide, narrow]);
  const split = { kind: 'split', aboveRow: 2, wide: 5 };
  expect(wirings.map(({ way, ports }) => [way, ports])).toEqual([
    [split, 16],
    [split, 16],
    [split, 12],
  ]);
  // Columns of 12, strips of five, the strip of three that is over; alone there would be two more.
  expect(union(wirings)).toBe(3);
  expect(union([wide.chosen, narrow.chosen])).toBe(5);
});

test('matchZones leaves zones of one shape as each chooses alone', () => {
  const one = answer(peer(columns, [1, 2]), peer(folded(2), [3]));
  expect(matchZones([one, one, one]).every((wiring) => wiring === one.chosen)).toBe(true);
  expect(matchZones([])).toEqual([]);
});

test('matchZones: fewest figures of run before all, though each zone alone has other ones', () => {
  const one = answer(peer(columns, [1]), peer(folded(2), [2, 3]));
  const other = answer(peer(columns, [4]), peer(folded(2), [2]));
  const third = answer(peer(columns, [5]), peer(folded(2), [2, 3]));
  expect(matchZones([one, other, third])).toEqual([one.peers[1], other.peers[1], third.peers[1]]);
});

test('matchZones: with as many figures of run the zones go one way, then load, cable and ports decide', () => {
  const one = answer(peer(columns, [1, 2]));
  const ways = answer(peer(folded(2), [1], { fullestPixels: 50 }), peer(columns, [2], { fullestPixels: 90 }));
  expect(matchZones([one, ways])[1]).toBe(ways.peers[1]);
  for (const better of [{ fullestPixels: 90 }, { cableMm: 900 }, { ports: 9 }]) {
    const equal = answer(peer(columns, [1]), peer(columns, [2], better));
    expect(matchZones([one, equal])[1]).toBe(equal.peers[1]);
  }
});

test('matchZones takes no two free wirings for one figure of zone', () => {
  const free: WayOfWiring = { kind: 'free' };
  const one = answer(peer(free, [1]), peer(columns, [1], { cableMm: 2000 }));
  const other = answer(peer(free, [1]), peer(columns, [1], { cableMm: 2000 }));
  expect(matchZones([one, other]).map(({ way }) => way)).toEqual([columns, columns]);
});

test('matchZones of two shapes has the fewest figures that any choice has, and of more no more than each alone', () => {
  const codes = fc.uniqueArray(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 4 });
  const peers = fc
    .array(codes, { minLength: 1, maxLength: 5 })
    .map((each) => [...each].sort((a, b) => a.length - b.length).map((figures, i) => peer(folded(i + 1), figures)));
  fc.assert(
    fc.property(fc.array(peers, { minLength: 2, maxLength: 4 }), (shapes) => {
      const answers = shapes.map((each) => answer(...each));
      const found = union(matchZones(answers));
      expect(found).toBeLessThanOrEqual(union(answers.map(({ chosen }) => chosen)));
      if (answers.length > 2) return;
      const all = answers[0]!.peers.flatMap((one) => answers[1]!.peers.map((other) => union([one, other])));
      expect(found).toBe(Math.min(...all));
    }),
    { numRuns: 300 },
  );
});

test('matchZones wires zones of the same answer the same', () => {
  const one = answer(peer(columns, [1, 2]), peer(folded(2), [3, 4]));
  const other = answer(peer(columns, [3]), peer(folded(2), [4]));
  const wirings = matchZones([one, other, one, other]);
  expect(wirings[2]).toBe(wirings[0]);
  expect(wirings[3]).toBe(wirings[1]);
});
