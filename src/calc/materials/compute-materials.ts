import type { Stock } from '../../plan/catalogue';
import type { Materials } from '../../plan/materials';
import { caseLines } from './case-lines';
import { countNeeded, type NeededInputs } from './count-needed';
import { isUnpriced } from './is-unpriced';
import { materialLine } from './material-line';
import type { MaterialsResults } from './material-result';

export interface MaterialsInputs extends NeededInputs {
  readonly materials: Materials;
  readonly stock: readonly Stock[];
}

/** The bill: every countable thing from the evaluation, with spares, stock, mass and price. A line without a price is left out of
 *  the totals, and counted in `unpriced` where the catalogue could have it. */
export function computeMaterials(inputs: MaterialsInputs): MaterialsResults {
  const items = countNeeded(inputs).map((item) => materialLine(item, inputs.materials, inputs.stock));
  const cases = caseLines(
    items.filter(({ group }) => group === 'panels'),
    inputs.panels,
  );
  const lines = [...items, ...cases];
  return {
    lines,
    massKg: lines.reduce((sum, line) => sum + line.massKg, 0),
    priceTotal: lines.reduce((sum, line) => sum + (line.needed + line.spare) * (line.priceEach ?? 0), 0),
    priceToGet: lines.reduce((sum, line) => sum + (line.price ?? 0), 0),
    unpriced: lines.filter(isUnpriced).length,
  };
}
