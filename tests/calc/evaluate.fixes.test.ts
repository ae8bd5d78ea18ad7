import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Check } from '../../src/calc/chapter';
import { createEvaluator } from '../../src/calc/evaluate';
import { applyCommand } from '../../src/plan/commands';
import { parsePlan } from '../../src/plan/parse-plan';
import { type Plan, plan as planSchema } from '../../src/plan/plan';
import { breakPlan, brokenPlans } from '../arbitraries/broken-plans';
import { smallPlan } from '../arbitraries/small-plan';

const { evaluate } = createEvaluator();
const stopsOf = (checks: readonly Check[]) => checks.flatMap(({ id, severity }) => (severity === 'stop' ? [id] : []));

/** A stop of the runs, nodes or links of a surface that had none before: nothing but its delay could be judged until a fix gave it its first zone. */
function isFirstSent(id: string, before: readonly Check[]): boolean {
  const chapter = ['runs.', 'nodes.', 'links.'].find((start) => id.startsWith(start));
  const letter = id.slice(id.lastIndexOf('.'));
  const judged = before.filter((other) => other.id !== `nodes.delay${letter}`);
  return chapter !== undefined && !judged.some((other) => other.id.startsWith(chapter) && other.id.endsWith(letter));
}

/** What goes wrong with the fixes of a plan when each is applied to it, and the checks that have one. */
function tryFixes(plan: Plan): { readonly tried: string[]; readonly wrong: string[] } {
  const before = evaluate(plan).checks;
  const stopped = new Set(stopsOf(before));
  const fixed = before.filter((check) => check.fix !== undefined);
  const wrong = fixed.flatMap(({ id, severity, fix }) => {
    const outcome = applyCommand(plan, fix!.command);
    if ('refused' in outcome) return [`${id}: ${outcome.refused} at ${outcome.path}`];
    const after = evaluate(outcome.plan).checks;
    const stays = after.some((check) => check.id === id && check.severity !== 'pass');
    // What a fix costs is weighed by who pays: the budget alone may stop after it.
    const fresh = stopsOf(after).filter(
      (other) => !stopped.has(other) && other !== 'wish.budget' && !isFirstSent(other, before),
    );
    return [
      ...(severity === 'pass' ? [`${id}: mends what is in order`] : []),
      ...(stays ? [`${id}: stays after '${fix!.label}'`] : []),
      ...fresh.map((other) => `${id}: '${fix!.label}' brings ${other}`),
    ];
  });
  return { tried: fixed.map(({ id }) => id), wrong };
}

const folder = new URL('../../fixtures/plans/', import.meta.url);

test.each(readdirSync(folder))('evaluate of fixtures/plans/%s offers only fixes that clear their check', (file) => {
  const parsed = parsePlan(readFileSync(new URL(file, folder), 'utf8'));
  if (!('plan' in parsed)) throw new Error(parsed.sentence);
  expect(tryFixes(parsed.plan).wrong).toEqual([]);
});

describe('evaluate of a sample with one thing broken on purpose', () => {
  test.each(brokenPlans)(
    '$what: $checkId has a fix, and every fix clears its check and stops nothing new',
    (broken) => {
      const plan = breakPlan(broken);
      expect(planSchema.safeParse(plan).error?.message).toBeUndefined();
      const { tried, wrong } = tryFixes(plan);
      expect(tried).toContain(broken.checkId);
      expect(wrong).toEqual([]);
    },
  );
});

test('evaluate of any plan offers only fixes that are taken, clear their check and stop nothing new', () => {
  fc.assert(
    fc.property(smallPlan, (plan) => {
      // Searches for the shortest cable take the longest, and are wired by the same fixes.
      const { wrong } = tryFixes({ ...plan, signal: { ...plan.signal, priority: 'repeats' } });
      expect(wrong).toEqual([]);
    }),
    { numRuns: 60 },
  );
});
