import type { Source, Step } from '../chapter';
import type { MaterialsInputs } from './compute-materials';
import type { MaterialsResults } from './material-result';

const counted: Source = { kind: 'given', text: 'counted from the plan; spares by the share stated' };

/** Spares of each panel type, and the price of what is to be got. */
export function workMaterials({ materials }: MaterialsInputs, results: MaterialsResults): Step[] {
  const panels = results.lines.filter((line) => line.group === 'panels');
  const spares = panels.map((line): Step => {
    const own = materials.byItem.find((item) => item.itemId === line.itemId);
    const { share, least } = own ?? { share: materials.spareShare, least: materials.spareLeast };
    return {
      figure: `spares of ${line.name}`,
      symbol: 'spare',
      expression: 'max(ceil(millionths * needed / 10^6), least)',
      numbers: { millionths: Math.round(share * 1e6), needed: line.needed, least },
      value: line.spare,
      unit: 'count',
      source: counted,
    };
  });
  const priced = results.lines.filter((line) => line.price !== null && line.price > 0);
  if (priced.length === 0) return spares;
  const numbers: Record<string, number> = {};
  const terms = priced.map((line, i) => {
    numbers[`get${i + 1}`] = line.toGet;
    numbers[`price${i + 1}`] = line.priceEach ?? 0;
    return `get${i + 1} * price${i + 1}`;
  });
  const sum: Step = {
    figure: 'price of what is to be got',
    symbol: 'price',
    expression: terms.join(' + '),
    numbers,
    value: results.priceToGet,
    unit: 'money',
    source: counted,
  };
  return [...spares, sum];
}
