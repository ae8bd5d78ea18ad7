import { expect, test } from 'vitest';
import type { ChapterId } from '../../src/calc/chapter';
import { createEvaluator } from '../../src/calc/evaluate';
import { applyCommand } from '../../src/plan/commands';
import type { Path } from '../../src/plan/commands/set-fields';
import type { Plan } from '../../src/plan/plan';
import { samplePlan } from '../arbitraries/sample-plans';

function edited(plan: Plan, path: Path, value: unknown): Plan {
  const outcome = applyCommand(plan, { name: 'set-fields', args: { fields: [{ path, value }] } });
  if (!('plan' in outcome)) throw new Error(outcome.refused);
  return outcome.plan;
}

/** Chapters that one edit of the horseshoe computes anew. */
function recomputed(path: Path, value: unknown): ChapterId[] {
  const computed: ChapterId[] = [];
  const { evaluate } = createEvaluator((chapter) => computed.push(chapter));
  const plan = samplePlan('horseshoe');
  evaluate(plan);
  computed.length = 0;
  evaluate(edited(plan, path, value));
  return computed;
}

test.each<[edit: string, path: Path, value: unknown, anew: ChapterId[], stays: ChapterId[]]>([
  [
    'a price moves no geometry, no wiring and no circuit',
    ['catalogue', 'panels', 1, 'purchase', 'price'],
    1234,
    ['panels', 'materials', 'wish'],
    ['walls', 'ceilings', 'picture', 'ports', 'zones', 'runs', 'power', 'heat', 'masses'],
  ],
  [
    'a joint leaves the catalogue alone',
    ['walls', 0, 'path', 1, 'jointDeg'],
    2,
    ['walls', 'ceilings', 'picture', 'ports', 'zones', 'runs', 'power', 'heat', 'masses', 'materials', 'wish'],
    ['panels'],
  ],
  [
    'a frame rate moves no geometry, and with as many processors no circuit',
    ['picture', 'base', 'rate'],
    { frames: 48, seconds: 1 },
    ['picture', 'ports', 'zones', 'runs', 'materials', 'wish'],
    ['panels', 'walls', 'ceilings', 'power', 'heat', 'masses'],
  ],
  [
    'reach is a matter of the wiring',
    ['signal', 'reachMm'],
    2000,
    ['ports', 'zones', 'runs', 'materials', 'wish'],
    ['panels', 'walls', 'ceilings', 'picture', 'power', 'heat', 'masses'],
  ],
  [
    'what cools the hall is a matter of heat',
    ['wish', 'coolingW'],
    90_000,
    ['heat', 'wish'],
    ['panels', 'walls', 'ceilings', 'picture', 'ports', 'zones', 'runs', 'power', 'masses', 'materials'],
  ],
])('evaluate after an edit computes anew what hangs on it: %s', (_, path, value, anew, stays) => {
  const computed = recomputed(path, value);
  expect(new Set(computed).size).toBe(computed.length);
  expect(anew.filter((chapter) => !computed.includes(chapter))).toEqual([]);
  expect(stays.filter((chapter) => computed.includes(chapter))).toEqual([]);
});
