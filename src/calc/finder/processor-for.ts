import type { Panel } from '../../plan/panel';
import type { Plan } from '../../plan/plan';

/** The processor for a panel: the stage's where it drives it, else the cheapest of the catalogue that does; null where none does. */
export function processorFor({ catalogue, signal }: Plan, { data }: Panel): string | null {
  const driving = catalogue.processors.filter(({ id }) => data.drivenBy.some(({ processorId }) => processorId === id));
  if (driving.some(({ id }) => id === signal.processorId)) return signal.processorId;
  const price = (processor: (typeof driving)[number]) => processor.purchase.price ?? Number.MAX_VALUE;
  return [...driving].sort((a, b) => price(a) - price(b))[0]?.id ?? null;
}
