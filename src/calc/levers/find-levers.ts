import { applyCommand } from '../../plan/commands';
import type { Plan } from '../../plan/plan';
import type { Check } from '../chapter';
import type { Evaluation } from '../evaluation';
import type { LeverAnswer, LeverDefinition, LeverFound, LeverShort, LeverStep, Topic } from './lever';
import { leverDefinitions } from './lever-definitions';
import { stopsOf } from './stops-of';

type Evaluate = (plan: Plan) => Evaluation;

/** Part of the search done, 0 to 1, between two evaluations: where a long search may pause or end. */
export type LeverProgress = { readonly done: number };

function costOf(step: LeverStep, before: Evaluation, after: Evaluation): number | null {
  if (step.buys === null) return null;
  return step.buys + after.materials.results.priceToGet - before.materials.results.priceToGet;
}

/** Tries a lever's steps, least change first, until none of the topic's stops is left. */
function* tryLever(
  definition: LeverDefinition,
  plan: Plan,
  before: Evaluation,
  topic: Topic,
  evaluate: Evaluate,
): Generator<void, LeverFound | LeverShort | null> {
  const steps = definition.steps(plan, before);
  if (steps.length === 0) return null;
  let remains: Check | null = null;
  for (const step of steps) {
    const outcome = applyCommand(plan, step.command);
    if ('refused' in outcome) continue;
    const after = evaluate(outcome.plan);
    const stops = stopsOf(topic, after, outcome.plan);
    const [first] = stops;
    if (!first) {
      const panelsLost = before.headline.panels - after.headline.panels;
      return { id: definition.id, name: definition.name, step, cost: costOf(step, before, after), panelsLost };
    }
    remains = first;
    yield;
  }
  return { id: definition.id, name: definition.name, remains };
}

/**
 * What must change: every lever alone with the least step that clears the topic's stops, or the stop that it leaves.
 * Steps go from the least change up, so one step less never fits. Yields between evaluations.
 */
export function* findLevers(plan: Plan, topic: Topic, evaluate: Evaluate): Generator<LeverProgress, LeverAnswer> {
  const before = evaluate(plan);
  const stops = stopsOf(topic, before, plan);
  const found: LeverFound[] = [];
  const short: LeverShort[] = [];
  if (stops.length === 0) return { topic, stops, found, short };
  const definitions = leverDefinitions.filter((definition) => definition.topics.includes(topic));
  for (const [i, definition] of definitions.entries()) {
    const search = tryLever(definition, plan, before, topic, evaluate);
    let turn = search.next();
    while (!turn.done) {
      yield { done: i / definitions.length };
      turn = search.next();
    }
    if (!turn.value) continue;
    if ('step' in turn.value) found.push(turn.value);
    else short.push(turn.value);
  }
  return { topic, stops, found, short };
}
