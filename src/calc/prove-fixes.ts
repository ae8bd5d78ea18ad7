import { applyCommand } from '../plan/commands';
import type { Plan } from '../plan/plan';
import type { Check, Fix } from './chapter';
import type { Evaluation } from './evaluation';
import { keepSoundFixes } from './keep-sound-fixes';

/**
 * Evaluates, and tries on the whole plan every fix that is still to be proved: it stays where it clears its check and stops nothing
 * new, else the other that it names takes its place, or none. A plan without one is evaluated once.
 */
export function proveFixes(evaluate: (plan: Plan) => Evaluation): (plan: Plan) => Evaluation {
  return (plan) => {
    const evaluation = evaluate(plan);
    const open = new Set(evaluation.checks.filter(({ fix }) => fix?.otherwise !== undefined));
    if (open.size === 0) return evaluation;
    const tried = evaluation.checks.map((check) => (open.has(check) ? check : withFix(check, null)));
    const kept = keepSoundFixes(tried, ({ command }) => {
      const outcome = applyCommand(plan, command);
      return 'plan' in outcome ? evaluate(outcome.plan).checks : tried;
    });
    const settled = new Map<Check, Check>();
    for (const [i, check] of evaluation.checks.entries())
      if (open.has(check)) settled.set(check, settle(check, kept[i]!));
    const take = (checks: readonly Check[]) => checks.map((check) => settled.get(check) ?? check);
    const changed = [...new Set([...open].map(({ chapter }) => chapter))].map((chapter) => [
      chapter,
      { ...evaluation[chapter], checks: take(evaluation[chapter].checks) },
    ]);
    return { ...evaluation, ...Object.fromEntries(changed), checks: take(evaluation.checks) };
  };
}

function settle(check: Check, tried: Check): Check {
  const { label, command, otherwise } = check.fix!;
  return withFix(check, tried.fix === undefined ? (otherwise ?? null) : { label, command });
}

function withFix({ fix: _before, ...check }: Check, fix: Fix | null): Check {
  return fix === null ? check : { ...check, fix };
}
