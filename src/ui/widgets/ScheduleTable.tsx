import { useVirtualizer } from '@tanstack/react-virtual';
import { type CSSProperties, type KeyboardEvent, useMemo, useRef, useState } from 'react';
import { rowMove } from './row-move';
import { type SortOrder, sortRows } from './sort-rows';

export interface ScheduleColumn {
  readonly key: string;
  readonly title: string;
  readonly widthPx: number;
  /** What the cell of a row says; asked only for rows on the screen. */
  readonly cell: (row: number) => string;
  /** What the column sorts by; left out where it does not sort. */
  readonly sortBy?: (row: number) => number | string;
  readonly words?: boolean;
}

export interface ScheduleTableProps {
  readonly label: string;
  readonly columns: readonly ScheduleColumn[];
  /** Rows are numbers 0 to count - 1: a record of a row is made only where one is seen. */
  readonly count: number;
  readonly picked?: number | null;
  readonly onPick?: (row: number) => void;
  /** Words under the table, such as a total. */
  readonly foot?: string;
}

const rowPx = 28;

/** A table of any length: only the rows in sight exist. Arrow keys, Page, Home and End move; Enter picks. */
export function ScheduleTable({ label, columns, count, picked = null, onPick, foot }: ScheduleTableProps) {
  const box = useRef<HTMLDivElement>(null);
  const [order, setOrder] = useState<SortOrder | null>(null);
  const [active, setActive] = useState(0);
  const sortBy = columns.find((column) => column.key === order?.key)?.sortBy;
  const rows = useMemo(() => (order && sortBy ? sortRows(count, sortBy, order.falling) : null), [count, order, sortBy]);
  const virtualizer = useVirtualizer({
    count,
    getScrollElement: () => box.current,
    estimateSize: () => rowPx,
    overscan: 12,
    scrollPaddingStart: 34,
  });
  const rowAt = (place: number) => rows?.[place] ?? place;
  const here = Math.min(active, count - 1);

  function moveTo(place: number): void {
    setActive(place);
    virtualizer.scrollToIndex(place);
    requestAnimationFrame(() => box.current?.querySelector<HTMLElement>(`[data-place="${place}"]`)?.focus());
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (!(event.target instanceof HTMLElement) || event.target.dataset.place === undefined) return;
    const pageRows = Math.max(1, Math.floor((box.current?.clientHeight ?? 0) / rowPx) - 2);
    const place = rowMove(event.key, here, count, pageRows);
    if (place !== null) {
      event.preventDefault();
      moveTo(place);
    } else if (onPick && (event.key === 'Enter' || event.key === ' ')) {
      event.preventDefault();
      onPick(rowAt(here));
    }
  }

  const seen = virtualizer.getVirtualItems();
  // Heights of the rows that are not there, above and below those in sight.
  const gaps = {
    '--above': `${seen[0]?.start ?? 0}px`,
    '--below': `${virtualizer.getTotalSize() - (seen.at(-1)?.end ?? 0)}px`,
  } as CSSProperties;
  return (
    <>
      <div ref={box} className="schedule">
        <table
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: its rows take the focus and answer arrow keys.
          role="grid"
          aria-label={label}
          aria-rowcount={count + 1}
          style={{ minWidth: columns.reduce((sum, column) => sum + column.widthPx, 0) }}
          onKeyDown={onKeyDown}
        >
          <colgroup>
            {columns.map((column) => (
              <col key={column.key} style={{ width: column.widthPx }} />
            ))}
          </colgroup>
          <thead>
            <tr aria-rowindex={1}>
              {columns.map((column) => (
                <HeadCell key={column.key} column={column} order={order} onSort={setOrder} />
              ))}
            </tr>
          </thead>
          <tbody style={gaps}>
            {seen.map(({ index: place }) => {
              const row = rowAt(place);
              return (
                <tr
                  key={place}
                  data-place={place}
                  aria-rowindex={place + 2}
                  aria-selected={onPick ? row === picked : undefined}
                  tabIndex={place === here ? 0 : -1}
                  onFocus={() => setActive(place)}
                  onClick={() => onPick?.(row)}
                >
                  {columns.map((column) => (
                    <td key={column.key} className={column.words ? 'words' : undefined}>
                      {column.cell(row)}
                    </td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      <p className="schedule-foot">
        <span>{foot}</span>
        <span>{count === 1 ? '1 row' : `${count} rows`}</span>
      </p>
    </>
  );
}

interface HeadCellProps {
  readonly column: ScheduleColumn;
  readonly order: SortOrder | null;
  readonly onSort: (order: SortOrder | null) => void;
}

/** Sorts rising, then falling, then as it was. */
function HeadCell({ column, order, onSort }: HeadCellProps) {
  const falling = order?.key === column.key ? order.falling : null;
  const sorted = falling === null ? 'none' : falling ? 'descending' : 'ascending';
  const mark = falling === null ? '' : falling ? ' ↓' : ' ↑';
  const next =
    falling === null ? { key: column.key, falling: false } : falling ? null : { key: column.key, falling: true };
  return (
    <th scope="col" aria-sort={column.sortBy ? sorted : undefined} className={column.words ? 'words' : undefined}>
      {column.sortBy ? (
        <button type="button" onClick={() => onSort(next)}>
          {column.title}
          {mark}
        </button>
      ) : (
        column.title
      )}
    </th>
  );
}
