import { expect, test } from 'vitest';
import { chooseWayFix } from '../../../src/calc/runs/choose-way-fix';
import { computeRuns } from '../../../src/calc/runs/compute-runs';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import type { HandChange, WayOfWiring } from '../../../src/plan/hand-change';
import { plainSignal } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { plainRuns } from './plain-runs';

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

test('chooseWayFix writes a way for every zone that knows it, and for no other', () => {
  expect(fixed([], 0)?.map(({ id }) => id)).toEqual(['way-A-1', 'way-A-2']);
  const narrow = plainSurface({ letter: 'A', columns: 5, bands });
  const given = plainRuns({ wall: narrow, signal: plainSignal({ bySurface: [{ ...own, zoneColumnsMost: 3 }] }) });
  const { zones } = wireStage(given);
  const unknowing = zones.map((zone, i) => (i === 0 ? zone : { ...zone, answer: { ...zone.answer, ways: [] } }));
  const fix = chooseWayFix('Use it', folded, unknowing, [], given);
  expect(fix?.command.args).toMatchObject({ fields: [{ value: [{ id: 'way-A-1' }] }] });
});

test('chooseWayFix applied leaves nothing at rest and wires every zone so', () => {
  const { given, stage } = build(fixed([], 0)!);
  expect(stage.resting).toEqual([]);
  expect(computeRuns(given, stage).zones.map(({ way }) => way.kind)).toEqual(['folded', 'folded', 'columns']);
});

test('chooseWayFix is null where no zone knows the way', () => {
  expect(fixed([], 0, { kind: 'rows' })).toBeNull();
});
