import { expect, test } from 'vitest';
import { chooseWayFix } from '../../../src/calc/runs/choose-way-fix';
import { computeRuns } from '../../../src/calc/runs/compute-runs';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import type { WiredZone } from '../../../src/calc/runs/wire-zones';
import type { HandChange, WayOfWiring } from '../../../src/plan/hand-change';
import { plainSignal } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { anchor, plainRuns } from './plain-runs';

const folded: WayOfWiring = { kind: 'folded', wide: 2 };
const bands = [{ type: plainType(216), rows: 3 }];
const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 4, returns: null, zonesUp: null };
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
  const fix = chooseWayFix('Use it', way, zones, handChanges, given, () => true);
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
  const fix = chooseWayFix('Use it', folded, unknowing, [], given, () => true);
  expect(fix?.command.args).toMatchObject({ fields: [{ value: [{ id: 'way-A-1' }] }] });
});

test('chooseWayFix applied leaves nothing at rest and wires every zone so', () => {
  const { given, stage } = build(fixed([], 0)!);
  expect(stage.resting).toEqual([]);
  expect(computeRuns(given, stage).zones.map(({ way }) => way.kind)).toEqual(['folded', 'folded', 'columns']);
});

test('chooseWayFix takes a way by hand from a zone that does not know the new one', () => {
  const narrow = plainSurface({ letter: 'A', columns: 5, bands });
  const given = plainRuns({ wall: narrow, signal: plainSignal({ bySurface: [{ ...own, zoneColumnsMost: 3 }] }) });
  const { zones } = wireStage(given);
  const unknowing = zones.map((zone, i) => (i === 0 ? zone : { ...zone, answer: { ...zone.answer, ways: [] } }));
  const old: HandChange = { kind: 'way', id: 'old', at: anchor(5, 1), way: { kind: 'rows' } };
  let after: readonly WiredZone[] = [];
  const fix = chooseWayFix('Use it', folded, unknowing, [old], given, (laid) => {
    after = laid;
    return true;
  });
  expect(fix?.command.args).toMatchObject({ fields: [{ value: [{ id: 'way-A-1' }] }] });
  expect(after.map(({ byHand }) => byHand)).toEqual([true, false]);
});

test('chooseWayFix is null where the zones after it do not hold what it is for', () => {
  const { given, stage } = build([]);
  expect(chooseWayFix('Use it', folded, stage.zones, [], given, () => false)).toBeNull();
});

test('chooseWayFix is null where no zone knows the way', () => {
  expect(fixed([], 0, { kind: 'rows' })).toBeNull();
});
