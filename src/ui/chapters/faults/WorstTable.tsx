import { useMemo } from 'react';
import { scheduleFailures } from '../../../sheets/schedule-failures';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { EmptyState } from '../../widgets/EmptyState';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { useFormat } from '../../widgets/use-format';

/** The ten worst single failures; a press on one shows what it darkens. */
export function WorstTable() {
  const results = useEvaluation((evaluation) => evaluation.faults.results);
  const { seek, setFaults } = useActions();
  const format = useFormat();
  const { columns, count, row } = useMemo(() => scheduleFailures(results), [results]);
  if (count === 0) return <EmptyState title="There is nothing yet that could fail." />;
  const shown: readonly FigureColumn<number>[] = columns.map(({ key, title, unit, align }, place) => ({
    key,
    title,
    words: align === 'start',
    cell: (index) => {
      const cell = row(index)[place];
      return typeof cell === 'number' && unit !== null ? format(cell, unit) : cell;
    },
  }));
  return (
    <FigureTable
      caption="The ten worst single failures"
      columns={shown}
      rows={Array.from({ length: count }, (_, index) => index)}
      keyOf={(index) => `${row(index)[0]}`}
      onPick={(index) => {
        setFaults({ asks: 'lost' });
        seek(`${row(index)[0]}`);
      }}
    />
  );
}
