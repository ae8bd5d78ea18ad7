import { memo } from 'react';
import type { CatalogueItem } from '../../../plan/find-item';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { CountField } from '../../widgets/CountField';
import { useFormat } from '../../widgets/use-format';

const notStated = 'not stated';

/** Every item of the catalogue: needed by the plan, owned, and how many more can be had. Its many fields are left alone when the page about them is drawn anew. */
export const StockTable = memo(function StockTable() {
  const catalogue = usePlan((plan) => plan.catalogue);
  const lines = useEvaluation((evaluation) => evaluation.materials.results.lines);
  const format = useFormat();
  const items: readonly CatalogueItem[] = Object.values(catalogue).flat();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reached by keyboard.
    <section className="table-box" aria-label="What there is" tabIndex={0}>
      <table className="figures stock">
        <caption className="unseen">Needed, owned and obtainable</caption>
        <thead>
          <tr>
            <th scope="col">Item</th>
            <th scope="col">Needed</th>
            <th scope="col">Owned</th>
            <th scope="col">More to be had</th>
          </tr>
        </thead>
        <tbody>
          {items.map(({ id, name }) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              <td>{format(lines.find((line) => line.itemId === id)?.needed ?? 0, 'count')}</td>
              <td>
                <StockField itemId={id} of="owned" label={`${name}, owned`} />
              </td>
              <td>
                <StockField itemId={id} of="obtainable" label={`${name}, more to be had`} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
});

function StockField({
  itemId,
  of,
  label,
}: {
  readonly itemId: string;
  readonly of: 'owned' | 'obtainable';
  readonly label: string;
}) {
  const value = usePlan((plan) => plan.wish.stock.find((entry) => entry.itemId === itemId)?.[of] ?? null);
  const { dispatch } = useActions();
  return (
    <CountField<number | null>
      label={label}
      value={value}
      absent={notStated}
      onCommit={(count) => {
        const outcome = dispatch(
          { name: 'set-stock', args: { itemId, [of]: count } },
          { mergeKey: `stock ${itemId} ${of}` },
        );
        return 'refused' in outcome ? outcome.refused : null;
      }}
    />
  );
}
