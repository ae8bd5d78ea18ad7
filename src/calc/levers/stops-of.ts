import type { Plan } from '../../plan/plan';
import type { ChapterId, Check } from '../chapter';
import type { Evaluation } from '../evaluation';
import type { Topic } from './lever';

const signalChapters: ReadonlySet<ChapterId> = new Set(['picture', 'ports', 'zones', 'runs']);

/**
 * What a topic's levers are to clear: stops of the signal chapters, and counts of what the topic is about that go beyond what
 * there is. Where only what is owned is stated, that is what there is.
 */
export function stopsOf(topic: Topic, evaluation: Evaluation, plan: Plan): readonly Check[] {
  const { panels, processors, breakouts, nodes } = plan.catalogue;
  const items = topic === 'panels' ? panels : [...processors, ...breakouts, ...nodes];
  const stockIds = new Set(items.map((item) => `wish.stock.${item.id}`));
  return evaluation.checks.filter((check) => {
    if (stockIds.has(check.id)) return check.measured !== null && check.limit !== null && check.measured > check.limit;
    return topic === 'signal' && check.severity === 'stop' && signalChapters.has(check.chapter);
  });
}
