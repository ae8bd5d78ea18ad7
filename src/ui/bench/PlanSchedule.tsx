import { panelAt } from '../../calc/surfaces/panel-at';
import type { Cell, Schedule, ScheduleColumn as SheetColumn } from '../../sheets/schedule';
import { useActions, useBench } from '../state/use-bench';
import { useEvaluation } from '../state/use-evaluation';
import { columnWidthPx } from '../widgets/column-width';
import { type ScheduleColumn, ScheduleTable } from '../widgets/ScheduleTable';
import { type Format, useFormat } from '../widgets/use-format';

function writeCell(cell: Cell | undefined, { unit }: SheetColumn, format: Format): string {
  if (cell === null || cell === undefined) return '';
  return typeof cell === 'number' && unit !== null ? format(cell, unit) : String(cell);
}

/** A schedule of the plan on the screen: sorts by any column; a picked row picks its panel in the drawing. */
export function PlanSchedule({ schedule }: { readonly schedule: Schedule }) {
  const format = useFormat();
  const actions = useActions();
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const pickedPanel = useBench((state) => (state.selection?.kind === 'panel' ? state.selection.index : null));
  const columns = schedule.columns.map(
    (column, place): ScheduleColumn => ({
      key: column.key,
      title: column.title,
      widthPx: columnWidthPx(column.title, firstTexts(schedule, place, format)),
      words: column.align === 'start',
      cell: (row) => writeCell(schedule.row(row)[place], column, format),
      sortBy: (row) => schedule.row(row)[place] ?? '',
    }),
  );
  const picked = pickedPanel === null ? null : findRow(schedule, pickedPanel);

  function onPick(row: number): void {
    const index = schedule.panelOf(row);
    const panel = index === null ? null : panelAt(surfaces, index);
    if (panel) actions.select({ kind: 'panel', index: panel.index, name: panel.name });
  }

  return (
    <ScheduleTable
      label={schedule.title}
      columns={columns}
      count={schedule.count}
      picked={picked}
      onPick={onPick}
      foot={totalsText(schedule, format)}
    />
  );
}

/** Cells at the head of a schedule, which stand for those below. */
function firstTexts(schedule: Schedule, place: number, format: Format): readonly string[] {
  const rows = Array.from({ length: Math.min(schedule.count, 40) }, (_, row) => schedule.row(row)[place]);
  return rows.map((cell) => writeCell(cell, schedule.columns[place]!, format));
}

function findRow(schedule: Schedule, panel: number): number | null {
  for (let row = 0; row < schedule.count; row++) if (schedule.panelOf(row) === panel) return row;
  return null;
}

function totalsText({ totals, columns }: Schedule, format: Format): string {
  if (!totals) return '';
  const parts = columns.flatMap((column, place) => {
    const text = writeCell(totals[place], column, format);
    if (text === '') return [];
    return typeof totals[place] === 'number' ? [`${column.title} ${text}`] : [text];
  });
  return parts.length === 0 ? '' : `In all: ${parts.join(', ')}`;
}
