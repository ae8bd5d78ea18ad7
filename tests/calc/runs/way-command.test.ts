import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { wayCommand } from '../../../src/calc/runs/way-command';
import { wayKey } from '../../../src/calc/runs/way-key';
import { applyCommand } from '../../../src/plan/commands';
import type { WayOfWiring } from '../../../src/plan/hand-change';
import type { Plan } from '../../../src/plan/plan';
import { samplePlan } from '../../arbitraries/sample-plans';

const plan: Plan = { ...samplePlan('horseshoe'), handChanges: [] };
const { evaluate } = createEvaluator();
const evaluation = evaluate(plan);
const wall = plan.walls[0]!;
const own = (of: typeof evaluation) => of.runs.results.zones.filter(({ surfaceId }) => surfaceId === wall.id);

function applied(before: Plan, way: WayOfWiring | null): Plan {
  const command = wayCommand(before, evaluate(before), { surfaceId: wall.id }, way);
  if (command === null) throw new Error('nothing to do');
  const outcome = applyCommand(before, command);
  if ('refused' in outcome) throw new Error(outcome.refused);
  return outcome.plan;
}

/** A way that every zone of the wall knows and none has. */
function anotherWay(): WayOfWiring {
  const zones = own(evaluation);
  const has = new Set(zones.map(({ way }) => wayKey(way)));
  return zones[0]!.ways.find(
    (way) => !has.has(wayKey(way)) && zones.every(({ ways }) => ways.some((known) => wayKey(known) === wayKey(way))),
  )!;
}

test('wayCommand wires every zone of the surface in the way, leaves nothing at rest and no other surface touched', () => {
  const way = anotherWay();
  const after = evaluate(applied(plan, way));
  expect(new Set(own(after).map((zone) => wayKey(zone.way)))).toEqual(new Set([wayKey(way)]));
  expect(after.runs.results.resting).toEqual([]);
  const others = (of: typeof evaluation) =>
    of.runs.results.zones.filter(({ surfaceId }) => surfaceId !== wall.id).map((zone) => wayKey(zone.way));
  expect(others(after)).toEqual(others(evaluation));
});

test('wayCommand comes to the figures that the table of ways shows for it', () => {
  const way = anotherWay();
  const shown = evaluation.runs.results.surfaces[0]!.ways.find((figures) => wayKey(figures.way) === wayKey(way))!;
  const after = evaluate(applied(plan, way)).runs.results.surfaces[0]!;
  expect(after.ports).toBe(shown.ports);
});

test('wayCommand without a way leaves the surface to the search again', () => {
  const back = applied(applied(plan, anotherWay()), null);
  expect(back.handChanges).toEqual([]);
  expect(evaluate(back).runs.results.runs).toEqual(evaluation.runs.results.runs);
});

test('wayCommand keeps changes of single runs', () => {
  const at = { surfaceId: wall.id, segmentId: wall.path[0]!.id, column: 1, row: 1 };
  const entry = { kind: 'entry', id: 'entry-1', at } as const;
  const changed = { ...plan, handChanges: [entry] };
  expect(applied(changed, anotherWay()).handChanges[0]).toEqual(entry);
  expect(wayCommand(changed, evaluate(changed), { surfaceId: wall.id }, null)).toBeNull();
});

test('wayCommand is null for a way that no zone knows and for a surface that is not there', () => {
  expect(wayCommand(plan, evaluation, { surfaceId: wall.id }, { kind: 'split', aboveRow: 999, wide: 1 })).toBeNull();
  expect(wayCommand(plan, evaluation, { surfaceId: 'no-such' }, { kind: 'columns' })).toBeNull();
});

test('wayCommand of one zone wires that zone alone, and leaves it to the search again', () => {
  const way = anotherWay();
  const command = wayCommand(plan, evaluation, { zone: 1 }, way)!;
  const pinned = applyCommand(plan, command);
  if ('refused' in pinned) throw new Error(pinned.refused);
  const after = evaluate(pinned.plan);
  const ways = own(after).map((zone) => wayKey(zone.way));
  expect(ways[1]).toBe(wayKey(way));
  expect(own(after).map(({ byHand }) => byHand)).toEqual(own(after).map((_, i) => i === 1));
  const back = applyCommand(pinned.plan, wayCommand(pinned.plan, after, { zone: 1 }, null)!);
  expect('plan' in back && back.plan.handChanges).toEqual([]);
  expect(wayCommand(plan, evaluation, { zone: 999 }, way)).toBeNull();
});
