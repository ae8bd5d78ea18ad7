import { useMemo, useState } from 'react';
import { type BuildStep, buildStep, type TickedKind } from '../../../plan/build-log';
import { useActions, useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { useLog } from '../../state/use-log';
import { ChoiceField } from '../../widgets/ChoiceField';
import { EmptyState } from '../../widgets/EmptyState';
import { type ScheduleColumn, ScheduleTable } from '../../widgets/ScheduleTable';
import { SegmentChoice } from '../../widgets/SegmentChoice';
import { kindWords, stepWords } from './step-words';
import { TickPad } from './TickPad';
import { filterThings, stepCell, type ThingFilter, thingFilters } from './thing-rows';
import { thingsInHand } from './things-in-hand';
import { useMoment } from './use-moment';

const kinds = (['column', 'port', 'circuit'] as const).map((value) => ({ value, label: `${kindWords[value]}s` }));

/** Every column, port or circuit with its steps, who ticked them and when; what is picked can be ticked here too. */
export function ThingTable() {
  const evaluation = useEvaluation((all) => all);
  const state = useLog();
  const selection = useBench((one) => one.selection);
  const { seek } = useActions();
  const moment = useMoment();
  const [kind, setKind] = useState<TickedKind>('column');
  const [filter, setFilter] = useState<ThingFilter>('all');
  const rows = useMemo(() => filterThings(state[kind], filter), [state, kind, filter]);
  const inHand = selection ? thingsInHand(evaluation, state, selection) : {};
  const picked = rows.findIndex(({ name }) => name === inHand[kind]?.name);
  const zones = evaluation.zones.results.zones;

  const step = (key: BuildStep): ScheduleColumn => ({
    key,
    title: stepWords[key],
    widthPx: 164,
    words: true,
    cell: (row) => stepCell(rows[row]!, key, moment),
    sortBy: (row) => rows[row]!.steps[key]?.atMs ?? 0,
  });
  const columns: readonly ScheduleColumn[] = [
    {
      key: 'name',
      title: kindWords[kind],
      widthPx: 84,
      words: true,
      cell: (row) => rows[row]!.name,
    },
    {
      key: 'zones',
      title: 'Processor',
      widthPx: 84,
      words: true,
      cell: (row) => rows[row]!.zones.map((zone) => zones[zone]?.processor).join(', '),
    },
    { key: 'panels', title: 'Panels', widthPx: 64, cell: (row) => `${rows[row]!.panels.length}` },
    ...buildStep.options.map(step),
  ];
  const done = buildStep.options.map((one) => `${stepWords[one]}: ${filterThings(rows, `done ${one}`).length}`);
  return (
    <>
      <div className="thing-choice">
        <SegmentChoice label="What is listed" value={kind} choices={kinds} onChoose={setKind} />
        <ChoiceField
          label="Show those that"
          value={filter}
          choices={thingFilters}
          onCommit={(value) => {
            setFilter(value);
            return null;
          }}
        />
      </div>
      {rows.length === 0 ? (
        <EmptyState title={state[kind].length === 0 ? 'The plan has none of these yet.' : 'None of them.'} />
      ) : (
        <ScheduleTable
          label={`${kindWords[kind]}s and their steps`}
          columns={columns}
          count={rows.length}
          picked={picked < 0 ? null : picked}
          onPick={(row) => seek(kind === 'port' ? `port ${rows[row]!.name}` : rows[row]!.name)}
          foot={done.join(', ')}
        />
      )}
      <TickPad things={inHand} />
    </>
  );
}
