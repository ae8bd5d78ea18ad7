import { expect, test } from 'vitest';
import { layHandChanges } from '../../../../src/calc/runs/hand-changes/lay-hand-changes';
import { wireZones } from '../../../../src/calc/runs/wire-zones';
import type { HandChange, WayOfWiring } from '../../../../src/plan/hand-change';
import { plainSignal } from '../../ports/plain-items';
import { plainSurface, plainType } from '../../zones/plain-surface';
import { anchor, plainRuns } from '../plain-runs';

// Two zones of three columns of three, a run for each column unless changed.
const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 3, returns: null, zonesUp: null };
const given = plainRuns({
  wall: plainSurface({ columns: 6, bands: [{ type: plainType(216), rows: 3 }] }),
  signal: plainSignal({ bySurface: [own] }),
});
const lay = (...changes: HandChange[]) => {
  const { zones, resting } = layHandChanges(wireZones(given), changes, given);
  const runs = zones.map(({ wiring }) =>
    Array.from({ length: wiring.ports }, (_, i) =>
      [...wiring.order.subarray(wiring.start[i], wiring.start[i + 1])].join(' '),
    ),
  );
  return { zones, runs, reasons: Object.fromEntries(resting.map(({ id, reason }) => [id, reason])) };
};
const way = (id: string, column: number, chosen: WayOfWiring): HandChange => ({
  kind: 'way',
  id,
  at: anchor(column, 1),
  way: chosen,
});
const columns = ['0 1 2', '3 4 5', '6 7 8'];

test('layHandChanges leaves a stage without any as the search wired it', () => {
  const { runs, zones, reasons } = lay();
  expect(runs).toEqual([columns, columns]);
  expect(zones.map(({ byHand }) => byHand)).toEqual([false, false]);
  expect(reasons).toEqual({});
});

test('layHandChanges gives the zone that holds the panel its way, and no other', () => {
  const { runs, zones } = lay(way('w', 5, { kind: 'folded', wide: 2 }));
  expect(runs).toEqual([columns, ['0 1 2 5 4 3', '6 7 8']]);
  expect(zones.map(({ byHand }) => byHand)).toEqual([false, true]);
});

test('layHandChanges lets the later of two ways of one zone hold', () => {
  const folded = way('early', 1, { kind: 'folded', wide: 2 });
  const { runs, reasons } = lay(folded, way('late', 3, { kind: 'columns' }));
  expect(runs[0]).toEqual(columns);
  expect(reasons.early).toContain('later change');
  expect(reasons.late).toBeUndefined();
});

test('layHandChanges wires a regular way that the search did not list', () => {
  const { runs, zones } = lay(way('w', 1, { kind: 'split', aboveRow: 1, wide: 3 }));
  // Above row 1 single columns of two up; below it the three lowest panels in one run.
  expect(runs[0]).toEqual(['0 3 6', '1 2', '4 5', '7 8']);
  expect(zones[0]?.wiring.way).toEqual({ kind: 'split', aboveRow: 1, wide: 3 });
});

test('layHandChanges lays entries, cuts and joins in their order over the way, and measures anew', () => {
  const { runs, zones, reasons } = lay(
    { kind: 'cut', id: 'c', from: anchor(1, 1), to: anchor(1, 2) },
    { kind: 'join', id: 'j', from: anchor(2, 1), to: anchor(1, 1) },
    { kind: 'entry', id: 'e', at: anchor(3, 3) },
  );
  // Column 1 is cut above its lowest panel, which column 2 (turned round) takes along; column 3 begins at its top.
  expect(runs[0]).toEqual(['1 2', '5 4 3 0', '8 7 6']);
  expect(reasons).toEqual({});
  expect(zones[0]?.wiring.pixels).toEqual(Float64Array.from([2, 4, 3].map((panels) => panels * 46_656)));
  expect(zones[0]?.byHand).toBe(true);
});

test('layHandChanges names what rests, with its reason, in the order of the file', () => {
  const { reasons } = lay(
    { kind: 'entry', id: 'gone', at: anchor(7, 1) },
    { kind: 'cut', id: 'apart', from: anchor(1, 1), to: anchor(2, 1) },
    { kind: 'join', id: 'across', from: anchor(3, 1), to: anchor(4, 1) },
    { kind: 'join', id: 'lost', from: anchor(1, 1), to: anchor(1, 9) },
    way('split', 1, { kind: 'split', aboveRow: 3, wide: 1 }),
    way('free', 4, { kind: 'free' }),
    way('nowhere', 9, { kind: 'columns' }),
  );
  expect(Object.keys(reasons)).toEqual(['gone', 'apart', 'across', 'lost', 'split', 'free', 'nowhere']);
  expect(reasons.across).toContain('different zones');
  expect(reasons.lost).toContain('no panel');
  expect(reasons.split).toContain('no row above');
  expect(reasons.free).toContain('irregular');
});

test('layHandChanges says so where a panel stands in no zone', () => {
  const noZones = { ...given, zones: { ...given.zones, zones: [] } };
  const { resting } = layHandChanges(wireZones(noZones), [{ kind: 'entry', id: 'e', at: anchor(1, 1) }], noZones);
  expect(resting).toEqual([{ id: 'e', reason: 'its panel is in no zone' }]);
});
