import type { MaterialsResults } from '../../calc/materials/material-result';
import { scheduleMaterials } from '../schedule-materials';
import { takeColumns } from '../take-columns';
import { blocksPart } from './blocks-part';
import type { CrewPart } from './crew-part';

/** What a crew loads and unloads: prices and lead times stay with whoever buys. */
const keys = ['group', 'item', 'needed', 'spare', 'owned', 'toGet', 'massEach', 'mass', 'countedAs'] as const;

/** Bill of materials; null where nothing is needed. */
export function billPart(materials: MaterialsResults): CrewPart | null {
  if (materials.lines.every(({ needed }) => needed === 0)) return null;
  const schedule = takeColumns(scheduleMaterials(materials), keys);
  return blocksPart('bill', schedule.title, null, [{ kind: 'table', title: '', schedule }]);
}
