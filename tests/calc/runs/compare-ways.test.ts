import { expect, test } from 'vitest';
import { compareWays } from '../../../src/calc/runs/compare-ways';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import { plainProcessor, plainSignal } from '../ports/plain-items';
import { plainSurface, plainType } from '../zones/plain-surface';
import { anchor, type PlainRuns, plainRuns } from './plain-runs';

const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 4, returns: null, zonesUp: null };
const compare = (rest: PlainRuns) => {
  const { zones } = wireStage(
    plainRuns({
      wall: plainSurface({ columns: 9, bands: [{ type: plainType(216), rows: 3 }] }),
      signal: plainSignal({ bySurface: [own] }),
      ...rest,
    }),
  );
  return compareWays('a', zones);
};

test('compareWays sums every way over all zones of the surface', () => {
  // Three zones of three columns (fewest blanks): 9 ports by columns, two a zone where columns go two by two.
  const ways = compare({});
  const zonesOf = (kind: string) => ways.find(({ way }) => way.kind === kind);
  expect(zonesOf('columns')).toMatchObject({ ports: 9, fewest: 3, most: 3, chosen: true, figures: 1 });
  expect(zonesOf('folded')).toMatchObject({ ports: 6, most: 6, chosen: false });
  expect(zonesOf('folded')?.fullestShare).toBeCloseTo((6 * 46_656) / 650_000, 12);
});

test('compareWays lists what needs fewer ports first, with the shortest and longest run and the highest entry', () => {
  const wall = plainSurface({
    columns: 4,
    bands: [{ type: plainType(216), rows: 3 }],
    isHole: (column, row) => column === 4 && row === 2,
    baseMm: 100,
  });
  const ways = compare({ wall });
  expect(ways.map(({ way, ports, fewest, most }) => [way.kind, ports, fewest, most])).toEqual([
    ['folded', 4, 1, 6],
    ['columns', 5, 1, 3],
  ]);
  // Above the hole column 4 begins anew at its third row.
  expect(ways[0]?.highestEntryMm).toBe(1100);
});

test('compareWays counts the processors that a way leaves short of ports', () => {
  const two = plainProcessor({}, { outlets: { kind: 'direct', ports: 2 } });
  const ways = compare({
    processors: [two],
    signal: plainSignal({ bySurface: [{ ...own, zoneColumnsMost: 3 }] }),
    wall: plainSurface({ columns: 6, bands: [{ type: plainType(216), rows: 3 }] }),
  });
  // The zones were cut at two columns, which two ports take; a way is never short there.
  expect(ways.map(({ processorsShort }) => processorsShort)).toEqual([0, 0]);
});

test('compareWays marks the way by which most panels are wired, hand changes included', () => {
  const change = (id: string, column: number) => ({
    kind: 'way' as const,
    id,
    at: anchor(column, 1),
    way: { kind: 'folded' as const, wide: 2 },
  });
  const chosen = (handChanges: ReturnType<typeof change>[]) => compare({ handChanges }).find((way) => way.chosen)?.way;
  expect(chosen([])).toEqual({ kind: 'columns' });
  // One zone of three by hand is not most; two are.
  expect(chosen([change('w1', 1)])).toEqual({ kind: 'columns' });
  expect(chosen([change('w1', 1), change('w2', 4)])).toEqual({ kind: 'folded', wide: 2 });
});

test('compareWays gives the chosen way the figures of the wiring as it is, cut by hand too', () => {
  const cut = { kind: 'cut' as const, id: 'c', from: anchor(1, 1), to: anchor(1, 2) };
  const folded = { kind: 'way' as const, id: 'w', at: anchor(4, 1), way: { kind: 'folded' as const, wide: 2 } };
  const ways = compare({ handChanges: [cut, folded] });
  // Three and one by the cut, two by the way, three: 9 ports where three columns a zone would take 9 as well.
  expect(ways.find(({ chosen }) => chosen)).toMatchObject({ way: { kind: 'columns' }, ports: 4 + 2 + 3, fewest: 1 });
  // The other way is counted as the search would wire it, without the cut.
  expect(ways.find(({ chosen }) => !chosen)).toMatchObject({ way: { kind: 'folded' }, ports: 6 });
});

test('compareWays counts the figures of all zones together', () => {
  const wall = plainSurface({
    columns: 9,
    bands: [{ type: plainType(216), rows: 3 }],
    // Column 1 is two panels high and column 9 one.
    isHole: (column, row) => (column === 1 && row === 3) || (column === 9 && row > 1),
  });
  const figures = compare({ wall }).map(({ way, figures: count }) => [way.kind, count]);
  // Zones of three columns. By columns runs of 3, 2 and 1 panels; two by two of 6, 2, 3 and 1: no zone has more than two of them.
  expect(figures).toEqual([
    ['folded', 4],
    ['columns', 3],
  ]);
});

test('compareWays of no zone is empty', () => {
  expect(compareWays('a', [])).toEqual([]);
});

test('compareWays counts a zone that does not know the way as it is searched together with the others', () => {
  const { zones } = wireStage(
    plainRuns({
      wall: plainSurface({ columns: 9, bands: [{ type: plainType(216), rows: 3 }] }),
      signal: plainSignal({ bySurface: [own] }),
    }),
  );
  const [first, ...others] = zones;
  const folded = first!.answer.ways.find(({ way }) => way.kind === 'folded')!;
  const columns = first!.answer.ways.find(({ way }) => way.kind === 'columns')!;
  // Alone the others would choose a fold, of two ports; together they are searched as columns, of three.
  const asOne = others.map((zone) => ({
    ...zone,
    answer: { ...zone.answer, chosen: folded, ways: [columns] },
    searched: columns,
    wiring: columns,
  }));
  const ways = compareWays('a', [first!, ...asOne]);
  expect(ways.find(({ way }) => way.kind === 'folded')).toMatchObject({ ports: 2 + 3 + 3 });
});
