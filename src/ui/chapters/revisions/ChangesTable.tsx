import { useMemo, useState } from 'react';
import type { Change } from '../../../calc/compare/change';
import { type ChangedFormats, scheduleChanges } from '../../../sheets/schedule-changes';
import { formatQuantity } from '../../../units/format-quantity';
import type { Unit } from '../../../units/unit';
import { downloadBytes } from '../../bench/download-bytes';
import { useActions } from '../../state/use-bench';
import { Button } from '../../widgets/Button';
import { ChoiceField } from '../../widgets/ChoiceField';
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
    widthPx: columnWidthPx(head, firstTexts(schedule, place)),
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
          choices={choicesOf(
            countBy(changes, ({ kind }) => kind),
            changes.length,
          )}
          onCommit={(kind) => choose({ kind })}
        />
        <ChoiceField
          label="Of what"
          value={filter.what}
          choices={choicesOf(
            countBy(changes, ({ what }) => what),
            changes.length,
          )}
          onCommit={(what) => choose({ what })}
        />
      </div>
      <div className="table-actions">
        <Button small onClick={saveCsv} disabled={shown.length === 0}>
          Save as CSV
        </Button>
      </div>
      <ScheduleTable label="What changed" columns={columns} count={shown.length} picked={picked} onPick={onPick} />
    </>
  );
}

/** Every key that comes up with its count, behind 'all'. */
function choicesOf<Key extends string>(counts: ReadonlyMap<Key, number>, total: number) {
  return [
    { value: 'all' as const, label: `all (${total})` },
    ...Array.from(counts, ([value, count]) => ({ value, label: `${value} (${count})` })),
  ];
}

function firstTexts({ count, row }: ReturnType<typeof scheduleChanges>, place: number): readonly string[] {
  return Array.from({ length: Math.min(count, 40) }, (_, index) => String(row(index)[place] ?? ''));
}
