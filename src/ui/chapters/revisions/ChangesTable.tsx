import { useMemo, useState } from 'react';
import type { Change } from '../../../calc/compare/change';
import type { Cell } from '../../../sheets/schedule';
import { type ChangedFormats, scheduleChanges } from '../../../sheets/schedule-changes';
import { formatQuantity } from '../../../units/format-quantity';
import type { Unit } from '../../../units/unit';
import { downloadBytes } from '../../bench/download-bytes';
import { useActions } from '../../state/use-bench';
import { Button } from '../../widgets/Button';
import { type Choice, ChoiceField } from '../../widgets/ChoiceField';
import { columnWidthPx } from '../../widgets/column-width';
import { useDisplayOptions } from '../../widgets/display-context';
import { ScheduleTable } from '../../widgets/ScheduleTable';
import { type ChangeFilter, countBy, filterChanges } from './change-groups';
import { changePlace } from './change-place';

export interface ChangesTableProps {
  readonly changes: readonly Change[];
  /** Currencies of the two states. */
  readonly currencies: { readonly before: string; readonly after: string };
  /** Words for the file: 'A to now'. */
  readonly title: string;
  /** True where the new state is the plan as it is now, so that its names can be picked. */
  readonly leads: boolean;
}

/** So narrow that both states stand side by side; the picked row is said in full below the table. */
const mostPx: Readonly<Record<string, number>> = { name: 130, before: 150, after: 150 };

const everything: ChangeFilter = { kind: 'all', what: 'all' };

/** What is otherwise, a row for each change; a picked row leads to what it names. */
export function ChangesTable({ changes, currencies, title, leads }: ChangesTableProps) {
  const options = useDisplayOptions();
  const { seek } = useActions();
  const [filter, setFilter] = useState(everything);
  const [picked, setPicked] = useState<number | null>(null);
  const shown = useMemo(() => filterChanges(changes, filter), [changes, filter]);
  const formats = useMemo((): ChangedFormats => {
    const formatOf = (currency: string) => (value: number, unit: Unit, extra: number) =>
      formatQuantity(value, unit, { ...options, currency }, extra);
    return { before: formatOf(currencies.before), after: formatOf(currencies.after) };
  }, [options, currencies.before, currencies.after]);
  const schedule = useMemo(() => scheduleChanges(shown, formats), [shown, formats]);
  const columns = schedule.columns.map(({ key, title: head }, place) => ({
    key,
    title: head,
    words: true,
    widthPx: Math.min(mostPx[key] ?? 90, columnWidthPx(head, firstTexts(schedule, place))),
    cell: (row: number) => String(schedule.row(row)[place] ?? ''),
    sortBy: (row: number) => schedule.row(row)[place] ?? '',
  }));
  const choose = (change: Partial<ChangeFilter>) => {
    setFilter({ ...filter, ...change });
    setPicked(null);
    return null;
  };

  async function saveCsv(): Promise<void> {
    const { scheduleToCsv } = await import('../../../files/schedule-to-csv');
    downloadBytes(scheduleToCsv(schedule, currencies.after), `${title}.csv`, 'text/csv');
  }
  function onPick(row: number): void {
    const place = changePlace(shown[row]!);
    setPicked(row);
    if (leads && place !== null) seek(place);
  }

  return (
    <>
      <div className="fields">
        <ChoiceField
          label="Change"
          value={filter.kind}
          choices={choicesOf(filterChanges(changes, { ...filter, kind: 'all' }), ({ kind }) => kind, filter.kind)}
          onCommit={(kind) => choose({ kind })}
        />
        <ChoiceField
          label="Of what"
          value={filter.what}
          choices={choicesOf(filterChanges(changes, { ...filter, what: 'all' }), ({ what }) => what, filter.what)}
          onCommit={(what) => choose({ what })}
        />
      </div>
      <div className="table-actions changes-actions">
        <Button small onClick={saveCsv} disabled={shown.length === 0}>
          Save as CSV
        </Button>
      </div>
      <ScheduleTable label="What changed" columns={columns} count={shown.length} picked={picked} onPick={onPick} />
      {picked !== null && <ChangeInFull cells={schedule.row(picked)} />}
    </>
  );
}

/** One change in all its words. */
function ChangeInFull({ cells }: { readonly cells: readonly Cell[] }) {
  const [kind, what, name, before, after] = cells;
  return (
    <dl className="change-in-full" aria-label="Picked change">
      <dt>
        {what} {name}, {kind}
      </dt>
      {before !== null && <dd>before: {before}</dd>}
      {after !== null && <dd>after: {after}</dd>}
    </dl>
  );
}

/** Every key that comes up with its count, behind 'all'; the chosen one is there even where it comes up no more. */
function choicesOf<Key extends string>(
  changes: readonly Change[],
  keyOf: (change: Change) => Key,
  chosen: Key | 'all',
): readonly Choice<Key | 'all'>[] {
  const counts = new Map<Key | 'all', number>([['all', changes.length], ...countBy(changes, keyOf)]);
  if (!counts.has(chosen)) counts.set(chosen, 0);
  return Array.from(counts, ([value, count]) => ({ value, label: `${value} (${count})` }));
}

function firstTexts({ count, row }: ReturnType<typeof scheduleChanges>, place: number): readonly string[] {
  return Array.from({ length: Math.min(count, 40) }, (_, index) => String(row(index)[place] ?? ''));
}
