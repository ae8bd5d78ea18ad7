import { applyCommand } from '../../plan/commands';
import type { Plan } from '../../plan/plan';
import type { Evaluation } from '../evaluation';
import type { Build, ExactFigures } from './build';

/** A build put in the plan and evaluated whole: what signal and power need; null where the plan cannot take it. */
export function exactFigures(plan: Plan, build: Build, evaluate: (plan: Plan) => Evaluation): ExactFigures | null {
  const outcome = applyCommand(plan, build.command);
  if ('refused' in outcome) return null;
  const { headline, checks } = evaluate(outcome.plan);
  return {
    processors: headline.processors,
    ports: headline.portsUsed,
    worstLegA: headline.worstLegA,
    circuits: headline.circuits,
    priceTotal: headline.priceTotal,
    stops: checks.filter((check) => check.severity === 'stop'),
  };
}

/** The same for a list, one by one, so that a long list may be stopped. */
export function* exactList(
  plan: Plan,
  builds: readonly Build[],
  evaluate: (plan: Plan) => Evaluation,
): Generator<{ readonly key: string; readonly figures: ExactFigures | null }, void> {
  for (const build of builds) yield { key: build.key, figures: exactFigures(plan, build, evaluate) };
}
