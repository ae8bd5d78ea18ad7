import type { Check } from '../chapter';
import type { GearPurchase, MaterialsInputs } from './compute-materials';
import type { MaterialsResults } from './material-result';

/** Lines without a price, and the longest lead time of what is to be got. */
export function checkMaterials(inputs: MaterialsInputs, results: MaterialsResults): Check[] {
  if (results.lines.length === 0) return [];
  return [checkPrices(results), ...checkLead(inputs, results)];
}

function checkPrices({ lines, unpriced }: MaterialsResults): Check {
  const where = lines
    .filter((line) => line.priceEach === null)
    .map((line) => ({ kind: 'item' as const, name: line.name }));
  const base = {
    id: 'materials.prices',
    chapter: 'materials' as const,
    measured: unpriced,
    limit: 0,
    unit: 'count' as const,
    where,
  };
  return unpriced > 0
    ? {
        ...base,
        severity: 'watch',
        sentence: '{measured} lines of the bill have no price, so the total leaves them out.',
      }
    : { ...base, severity: 'pass', sentence: 'Every line of the bill has a price.' };
}

function checkLead(inputs: MaterialsInputs, { lines }: MaterialsResults): Check[] {
  const items: readonly Pick<GearPurchase, 'id' | 'name' | 'purchase'>[] = [
    ...inputs.panels,
    ...inputs.processors,
    ...inputs.breakouts,
    ...inputs.nodes,
    ...inputs.distros,
  ].map(({ id, name, purchase }) => ({ id, name, purchase }));
  const wanted = new Set(lines.filter((line) => line.toGet > 0).map((line) => line.itemId));
  const longest = items
    .filter((item) => wanted.has(item.id) && item.purchase.leadDays !== null)
    .sort((a, b) => (b.purchase.leadDays ?? 0) - (a.purchase.leadDays ?? 0))[0];
  if (!longest || longest.purchase.leadDays === null) return [];
  return [
    {
      id: 'materials.lead',
      chapter: 'materials',
      severity: 'offer',
      measured: longest.purchase.leadDays,
      limit: null,
      unit: 'days',
      where: [{ kind: 'item', name: longest.name }],
      sentence: `${longest.name} takes longest to come: {measured} by its sheet. When it must be here is not stated.`,
    },
  ];
}
