import type { Plan } from '../../plan/plan';
import type { Evaluation } from '../evaluation';
import type { Build, ExactFigures, LeastFigures } from './build';
import { exactFigures } from './exact-figures';
import { leastFigures } from './least-figures';

/** What is known of one build so far; null where the plan cannot take it. */
export type BuildWeighed =
  | { readonly key: string; readonly least: LeastFigures | null }
  | { readonly key: string; readonly exact: ExactFigures | null };

/** Signal and power of a list of builds: bounds of all of them first, then exact figures one by one, so that it may be stopped. */
export function* weighBuilds(
  plan: Plan,
  builds: readonly Build[],
  evaluate: (plan: Plan) => Evaluation,
): Generator<BuildWeighed, void> {
  for (const build of builds) yield { key: build.key, least: leastFigures(plan, build) };
  for (const build of builds) yield { key: build.key, exact: exactFigures(plan, build, evaluate) };
}
