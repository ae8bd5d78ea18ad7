import type { MaterialLine } from '../../../calc/materials/material-result';
import { EmptyState } from '../../widgets/EmptyState';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { type Format, useFormat } from '../../widgets/use-format';

const notStated = 'not stated';

const columns = (format: Format): readonly FigureColumn<MaterialLine>[] => [
  {
    key: 'name',
    title: 'Item',
    cell: ({ name, countedAs }) => (
      <>
        {name} <span className="counted">{countedAs}</span>
      </>
    ),
  },
  { key: 'needed', title: 'Needed', cell: ({ needed }) => format(needed, 'count') },
  { key: 'spare', title: 'Spare', cell: ({ spare }) => format(spare, 'count') },
  {
    key: 'owned',
    title: 'Owned',
    cell: ({ owned }) => (owned === null ? <span className="folds absent">{notStated}</span> : format(owned, 'count')),
  },
  { key: 'get', title: 'To get', cell: ({ toGet }) => format(toGet, 'count') },
  { key: 'mass', title: 'Mass', cell: ({ massKg }) => format(massKg, 'kg') },
  { key: 'each', title: 'Price each', cell: ({ priceEach }) => format(priceEach, 'money', notStated) },
  { key: 'price', title: 'Price to get', cell: ({ price }) => format(price, 'money', notStated) },
];

/** The bill line by line, whole, so that print and reading aloud have all of it. */
export function BillTable({ lines }: { readonly lines: readonly MaterialLine[] }) {
  const format = useFormat();
  if (lines.length === 0) return <EmptyState title="Nothing to count yet: the plan has no panels." />;
  return (
    <div className="bill">
      <FigureTable caption="Bill of materials" columns={columns(format)} rows={lines} keyOf={({ itemId }) => itemId} />
    </div>
  );
}
