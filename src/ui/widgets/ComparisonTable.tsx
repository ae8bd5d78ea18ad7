import type { FigureColumn } from './FigureTable';
import { FoldingFigure } from './FoldingFigure';

export interface ComparisonTableProps<Thing> {
  /** What is compared; not seen. */
  readonly caption: string;
  /** The first names each thing at the head of its column; the others are rows. */
  readonly figures: readonly FigureColumn<Thing>[];
  readonly things: readonly Thing[];
  readonly keyOf: (thing: Thing) => string;
  readonly isChosen?: (thing: Thing) => boolean;
  /** The thing that holds now, with what is said of it at the head of its column. */
  readonly current?: { readonly is: (thing: Thing) => boolean; readonly words: string } | undefined;
}

/** From more than so many on, columns are narrow. */
const manyThings = 3;

/** Few things side by side, figure under figure: what a buyer compares. */
export function ComparisonTable<Thing>({
  caption,
  figures,
  things,
  keyOf,
  isChosen,
  current,
}: ComparisonTableProps<Thing>) {
  const [name, ...rows] = figures;
  if (!name) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reached by keyboard.
    <section className="table-box" aria-label={caption} tabIndex={0}>
      <table className={things.length > manyThings ? 'figures comparison many' : 'figures comparison'}>
        <caption className="unseen">{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{name.title}</th>
            {things.map((thing) => (
              <th
                key={keyOf(thing)}
                scope="col"
                data-chosen={isChosen?.(thing) || undefined}
                aria-current={current?.is(thing) || undefined}
              >
                {name.cell(thing)}
                {current?.is(thing) && <span className="current-words">{current.words}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key}>
              <th scope="row">{row.title}</th>
              {things.map((thing) => (
                <td
                  key={keyOf(thing)}
                  data-chosen={isChosen?.(thing) || undefined}
                  data-current={current?.is(thing) || undefined}
                >
                  <FoldingFigure>{row.cell(thing)}</FoldingFigure>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
