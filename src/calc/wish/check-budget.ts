import type { Check } from '../chapter';
import type { MaterialsResults } from '../materials/material-result';

/** What is still to be got against the budget; lines without a price make it a lower bound. Null: not stated. */
export function checkBudget(budget: number | null, { lines, priceToGet, unpriced }: MaterialsResults): Check[] {
  if (lines.length === 0) return [];
  const common = {
    id: 'wish.budget',
    chapter: 'wish',
    measured: priceToGet,
    limit: budget,
    unit: 'money',
    where: [{ kind: 'field', name: 'wish.budget' }],
    values: { unpriced: { value: unpriced, unit: 'count' } },
  } as const;
  const cost = unpriced > 0 ? 'What is to be got costs at least {measured}' : 'What is to be got costs {measured}';
  if (budget === null) return [{ ...common, severity: 'offer', sentence: `${cost}; the budget is not stated.` }];
  if (priceToGet > budget) {
    return [{ ...common, severity: 'stop', sentence: `${cost}, more than the budget of {limit}.` }];
  }
  if (unpriced > 0) {
    const sentence = `${cost} of a budget of {limit}; lines of the bill that have no price: {unpriced}.`;
    return [{ ...common, severity: 'watch', sentence }];
  }
  return [{ ...common, severity: 'pass', sentence: `${cost} of a budget of {limit}.` }];
}
