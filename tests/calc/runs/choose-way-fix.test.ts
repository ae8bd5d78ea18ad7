import { expect, test } from 'vitest';
import { chooseWayFix } from '../../../src/calc/runs/choose-way-fix';
import { computeRuns } from '../../../src/calc/runs/compute-runs';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import type { HandChange, WayOfWiring } from '../../../src/plan/hand-change';
import { plainSignal } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { anchor, plainRuns } from './plain-runs';

const folded: WayOfWiring = { kind: 'folded', wide: 2 };
const bands = [{ type: plainType(216), rows: 3 }];
const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 4, zonesUp: null };
const surfaces = setOf(
  plainSurface({ letter: 'A', columns: 8, bands, isHole: (column, row) => column === 1 && row === 1 }),
  plainSurface({ letter: 'B', kind: 'ceiling', columns: 2, bands }),
);
const build = (handChanges: readonly HandChange[]) => {
  const given = plainRuns({ surfaces, signal: plainSignal({ bySurface: [own] }), handChanges });
  return { given, stage: wireStage(given) };
};
const fixed = (handChanges: readonly HandChange[], surface: number, way: WayOfWiring = folded): HandChange[] | null => {
  const { given, stage } = build(handChanges);
  const zones = stage.zones.filter((zone) => zone.surface === surface);
  const fix = chooseWayFix('Use it', way, zones, handChanges, given);
  if (fix === null || fix.command.name !== 'set-fields') return null;
  expect(fix.command.args.fields[0]?.path).toEqual(['handChanges']);
  return fix.command.args.fields[0]?.value as HandChange[];
};

test('chooseWayFix writes a way for every zone of the surface, anchored to a panel that is there', () => {
  expect(fixed([], 0)).toEqual([
    { kind: 'way', id: 'way-A-1', at: anchor(1, 2), way: folded },
    { kind: 'way', id: 'way-A-2', at: anchor(5, 1), way: folded },
  ]);
  expect(fixed([], 1)?.[0]).toMatchObject({ at: { surfaceId: 'b', segmentId: null, column: -2, row: -1 } });
});

test('chooseWayFix applied leaves nothing at rest and wires every zone so', () => {
  const { given, stage } = build(fixed([], 0)!);
  expect(stage.resting).toEqual([]);
  expect(computeRuns(given, stage).zones.map(({ way }) => way.kind)).toEqual(['folded', 'folded', 'columns']);
});

test('chooseWayFix takes the place of ways of these zones and keeps every other change, ids apart', () => {
  const old: HandChange = { kind: 'way', id: 'way-A-2', at: anchor(6, 2), way: { kind: 'columns' } };
  const gone: HandChange = { kind: 'way', id: 'way-A-1', at: anchor(99, 1), way: { kind: 'columns' } };
  const above: HandChange = { kind: 'way', id: 'c', at: anchor(-2, -1, 'b', null), way: { kind: 'columns' } };
  const cut: HandChange = { kind: 'cut', id: 'cut', from: anchor(2, 1), to: anchor(2, 2) };
  const changes = fixed([old, gone, above, cut], 0)!;
  expect(changes.map(({ id }) => id)).toEqual(['way-A-1', 'c', 'cut', 'way-A-2', 'way-A-3']);
  expect(changes[0]).toBe(gone);
});

test('chooseWayFix is null where no zone knows the way', () => {
  expect(fixed([], 0, { kind: 'rows' })).toBeNull();
});
