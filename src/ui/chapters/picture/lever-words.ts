import type { LeverFound, LeverStep } from '../../../calc/levers/lever';
import type { Format } from '../../widgets/use-format';

/** A step as a person reads it: the choice by its name, a size from what is to what must be. */
export function changeWords({ choice, from, to }: LeverStep, format: Format): string {
  return choice ?? `${format(from.value, from.unit)} to ${format(to.value, to.unit)}`;
}

/** What a lever costs: money with its sign, spared money with a minus, and the panels that the stage loses by it. */
export function costWords({ cost, panelsLost }: Pick<LeverFound, 'cost' | 'panelsLost'>, format: Format): string {
  const lost = panelsLost > 0 ? `, ${format(panelsLost, 'count')} ${panelsLost === 1 ? 'panel' : 'panels'} fewer` : '';
  return `${moneyWords(cost, format)}${lost}`;
}

function moneyWords(cost: number | null, format: Format): string {
  if (cost === null) return 'price not stated';
  if (cost === 0) return 'no cost';
  return cost > 0 ? `+${format(cost, 'money')}` : `−${format(-cost, 'money')}`;
}
