import type { ReactNode } from 'react';
import { FoldingFigure } from './FoldingFigure';

export interface FigureColumn<Row> {
  readonly key: string;
  readonly title: string;
  readonly cell: (row: Row) => ReactNode;
  /** Words stand left, figures right; the first column is always words. */
  readonly words?: boolean;
}

export interface FigureTableProps<Row> {
  /** What the table shows; seen only where `captioned`. */
  readonly caption: string;
  readonly captioned?: boolean;
  readonly columns: readonly FigureColumn<Row>[];
  readonly rows: readonly Row[];
  readonly keyOf: (row: Row) => string;
  /** The row that holds in the plan. */
  readonly isChosen?: (row: Row) => boolean;
  /** Makes each row's first cell a button; the answer to `Enter` and a click on the row alike. */
  readonly onPick?: (row: Row) => void;
}

/** A short table of results. Long ones are schedules. */
export function FigureTable<Row>(props: FigureTableProps<Row>) {
  const { caption, captioned = false, columns, rows, keyOf, isChosen, onPick } = props;
  const [first, ...others] = columns;
  if (!first) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reached by keyboard.
    <section className="table-box" aria-label={caption} tabIndex={0}>
      <table className="figures">
        <caption className={captioned ? undefined : 'unseen'}>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.key} scope="col" className={column.words ? 'words' : undefined}>
                {column.title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={keyOf(row)} data-chosen={isChosen?.(row) ? '' : undefined}>
              <th scope="row">
                {onPick ? (
                  <button type="button" className="row-button" onClick={() => onPick(row)}>
                    {first.cell(row)}
                  </button>
                ) : (
                  first.cell(row)
                )}
                {isChosen?.(row) && <span className="unseen"> (in the plan)</span>}
              </th>
              {others.map((column) => (
                <td key={column.key} className={column.words ? 'words' : undefined}>
                  {column.words ? column.cell(row) : <FoldingFigure>{column.cell(row)}</FoldingFigure>}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
