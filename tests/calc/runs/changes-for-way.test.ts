import { expect, test } from 'vitest';
import { changesForWay } from '../../../src/calc/runs/changes-for-way';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import type { HandChange, WayOfWiring } from '../../../src/plan/hand-change';
import { plainSignal } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { anchor, plainRuns } from './plain-runs';

const rows: WayOfWiring = { kind: 'rows' };
const bands = [{ type: plainType(216), rows: 3 }];
const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 4, returns: null, zonesUp: null };
const surfaces = setOf(
  plainSurface({ letter: 'A', columns: 8, bands, isHole: (column, row) => column === 1 && row === 1 }),
  plainSurface({ letter: 'B', kind: 'ceiling', columns: 2, bands }),
);
const given = plainRuns({ surfaces, signal: plainSignal({ bySurface: [own] }) });
const { zones } = wireStage(given);
const onWall = zones.filter(({ surface }) => surface === 0);

test('changesForWay anchors a way for every zone to a panel that is there', () => {
  expect(changesForWay(rows, onWall, [], given)).toEqual([
    { kind: 'way', id: 'way-A-1', at: anchor(1, 2), way: rows },
    { kind: 'way', id: 'way-A-2', at: anchor(5, 1), way: rows },
  ]);
  expect(changesForWay(rows, zones, [], given).at(-1)).toEqual({
    kind: 'way',
    id: 'way-B-1',
    at: { surfaceId: 'b', segmentId: null, column: -2, row: -1 },
    way: rows,
  });
});

test('changesForWay takes the place of ways of these zones and keeps every other change, ids apart', () => {
  const old: HandChange = { kind: 'way', id: 'way-A-2', at: anchor(6, 2), way: { kind: 'columns' } };
  const gone: HandChange = { kind: 'way', id: 'way-A-1', at: anchor(99, 1), way: { kind: 'columns' } };
  const above: HandChange = { kind: 'way', id: 'c', at: anchor(-2, -1, 'b', null), way: { kind: 'columns' } };
  const cut: HandChange = { kind: 'cut', id: 'cut', from: anchor(2, 1), to: anchor(2, 2) };
  const changes = changesForWay(rows, onWall, [old, gone, above, cut], given);
  expect(changes.map(({ id }) => id)).toEqual(['way-A-1', 'c', 'cut', 'way-A-2', 'way-A-3']);
  expect(changes[0]).toBe(gone);
});

test('changesForWay laid over the wiring leaves nothing at rest and reaches every zone', () => {
  const stage = wireStage({ ...given, handChanges: changesForWay(rows, onWall, [], given) });
  expect(stage.resting).toEqual([]);
  expect(stage.zones.map(({ wiring }) => wiring.way.kind)).toEqual(['rows', 'rows', 'columns']);
});
