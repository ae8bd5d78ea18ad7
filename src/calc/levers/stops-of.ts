import type { Plan } from '../../plan/plan';
import type { Check, ChapterId } from '../chapter';
import type { Evaluation } from '../evaluation';
import type { Topic } from './lever';

const signalChapters: ReadonlySet<ChapterId> = new Set(['picture', 'ports', 'zones', 'runs']);

/** Stops that a topic's levers are to clear: of the signal chapters, and of the counts owned of what the topic is about. */
export function stopsOf(topic: Topic, evaluation: Evaluation, plan: Plan): readonly Check[] {
  const { panels, processors, breakouts } = plan.catalogue;
  const items = topic === 'panels' ? panels : [...processors, ...breakouts];
  const stockIds = new Set(items.map((item) => `wish.stock.${item.id}`));
  return evaluation.checks.filter(
    (check) =>
      check.severity === 'stop' &&
      (stockIds.has(check.id) || (topic === 'signal' && signalChapters.has(check.chapter))),
  );
}
