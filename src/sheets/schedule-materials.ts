import type { MaterialsResults } from '../calc/materials/material-result';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';

/** Bill of materials: every countable thing, needed, spare, owned and to get. */
export function scheduleMaterials({ lines, massKg, priceToGet }: MaterialsResults): Schedule {
  return {
    id: 'materials',
    title: 'Bill of materials',
    columns: [
      words('group', 'Group'),
      words('item', 'Item'),
      figures('needed', 'Needed', 'count'),
      figures('spare', 'Spare', 'count'),
      figures('owned', 'Owned', 'count'),
      figures('toGet', 'To get', 'count'),
      figures('obtainable', 'Obtainable', 'count'),
      figures('massEach', 'Mass each', 'kg'),
      figures('mass', 'Mass', 'kg'),
      figures('priceEach', 'Price each', 'money'),
      figures('price', 'Price to get', 'money'),
      figures('leadDays', 'Lead time', 'days'),
      words('countedAs', 'Counted as'),
    ],
    count: lines.length,
    row: (index) => {
      const line = lines[index]!;
      return [
        line.group,
        line.name,
        line.needed,
        line.spare,
        line.owned ?? 'not stated',
        line.toGet,
        line.obtainable ?? 'not stated',
        line.massKgEach,
        line.massKg,
        line.priceEach ?? 'not stated',
        line.price ?? 'not stated',
        line.leadDays ?? 'not stated',
        line.countedAs,
      ];
    },
    panelOf: () => null,
    totals: ['All', null, null, null, null, null, null, null, massKg, null, priceToGet, null, null],
  };
}
