import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Change } from '../../../src/calc/compare/change';
import { comparePlans } from '../../../src/calc/compare/compare-plans';
import { createEvaluator } from '../../../src/calc/evaluate';
import { applyCommand } from '../../../src/plan/commands';
import type { Plan } from '../../../src/plan/plan';
import { edit } from '../../arbitraries/edit';
import { smallPlan } from '../../arbitraries/small-plan';
import { wiredPlan } from '../../arbitraries/wired-plan';

const evaluated = (plan: Plan) => createEvaluator().evaluate(plan);
const plans = fc.oneof({ weight: 1, arbitrary: smallPlan }, { weight: 2, arbitrary: wiredPlan });

/** The plan with every list whose order means nothing in another order; the first cable of a kind is the one counted. */
function reordered(plan: Plan): Plan {
  const { panels, processors, breakouts, distros, nodes } = plan.catalogue;
  const turned = {
    panels: panels.toReversed(),
    processors: processors.toReversed(),
    breakouts: breakouts.toReversed(),
    distros: distros.toReversed(),
    nodes: nodes.toReversed(),
  };
  return {
    ...plan,
    catalogue: { ...plan.catalogue, ...turned },
    wish: { ...plan.wish, stock: plan.wish.stock.toReversed() },
    materials: { ...plan.materials, byItem: plan.materials.byItem.toReversed() },
    alternatives: plan.alternatives.toReversed(),
  };
}

/** The plan with other ids: whatever text is the id of something that has a name of its own, wherever it stands. */
function withOtherIds(plan: Plan): Plan {
  const { walls, ceilings, catalogue } = plan;
  const named = [walls, ceilings, ...Object.values(catalogue)].flat();
  const ids = new Map(named.map(({ id }) => [id, `other-${id}`]));
  const renew = (value: unknown): unknown => {
    if (typeof value === 'string') return ids.get(value) ?? value;
    if (Array.isArray(value)) return value.map(renew);
    if (typeof value !== 'object' || value === null) return value;
    const idLike = /(^id|Id|Ids)$/;
    return Object.fromEntries(
      Object.entries(value).map(([key, each]) => [
        key,
        typeof each !== 'object' && !idLike.test(key) ? each : renew(each),
      ]),
    );
  };
  return renew(plan) as Plan;
}

/** What the comparison the other way round must hold. */
function mirrored(change: Change): Change {
  const { kind, before, after } = change;
  const kinds = { added: 'removed', removed: 'added', moved: 'moved', changed: 'changed', renamed: 'renamed' } as const;
  const name = kind === 'renamed' ? String(before?.[0]) : change.name;
  return { ...change, kind: kinds[kind], name, before: after, after: before };
}

const sorted = (changes: readonly Change[]) => changes.map((change) => JSON.stringify(change)).sort();

/** Kinds of things whose words name all that they are made of; a panel that moved by less than is shown reads as before. */
const toldInFull: ReadonlySet<Change['what']> = new Set(['port', 'trunk', 'node', 'circuit', 'item', 'figure']);

/** Compares two plans both ways: what is otherwise reads otherwise, and the ways mirror. */
function expectMirrored(one: Plan, other: Plan): void {
  const [before, after] = [evaluated(one), evaluated(other)];
  const there = comparePlans(before, after);
  for (const change of there) {
    if (toldInFull.has(change.what)) expect(change.before).not.toEqual(change.after);
  }
  expect(sorted(comparePlans(after, before))).toEqual(sorted(there.map(mirrored)));
}

test('comparePlans of a plan with itself, or with its lists in another order, is empty', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      const before = evaluated(plan);
      expect(comparePlans(before, evaluated(plan))).toEqual([]);
      expect(comparePlans(before, evaluated(reordered(plan)))).toEqual([]);
    }),
    { numRuns: 10 },
  );
});

test('comparePlans is blind to ids', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      expect(comparePlans(evaluated(plan), evaluated(withOtherIds(plan)))).toEqual([]);
    }),
    { numRuns: 10 },
  );
});

test('comparePlans the other way round mirrors', () => {
  fc.assert(
    fc.property(plans, fc.array(edit, { minLength: 3, maxLength: 8 }), (plan, edits) => {
      const edited = edits.reduce((now, command) => {
        const outcome = applyCommand(now, command);
        return 'plan' in outcome ? outcome.plan : now;
      }, plan);
      expectMirrored(plan, edited);
    }),
    { numRuns: 12 },
  );
});

test('comparePlans mirrors between plans that have nothing to do with each other', () => {
  fc.assert(
    fc.property(plans, plans, (one, other) => {
      expectMirrored(one, other);
    }),
    { numRuns: 8 },
  );
});
