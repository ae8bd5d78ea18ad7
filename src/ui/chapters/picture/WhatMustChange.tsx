import type { LeverAnswer, LeverFound, Topic } from '../../../calc/levers/lever';
import { labelCommand } from '../../../plan/commands';
import { formatSentence } from '../../../units/format-sentence';
import { useSay } from '../../bench/notice-context';
import { SearchProgress } from '../../bench/SearchProgress';
import { useActions, useBench, useBenchStore } from '../../state/use-bench';
import { useSweep } from '../../state/use-sweep';
import { Button } from '../../widgets/Button';
import { useDisplayOptions } from '../../widgets/display-context';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { type Format, useFormat } from '../../widgets/use-format';
import { changeWords, costWords } from './lever-words';

/** Every lever alone: the least change that makes the plan fit, what it costs, and a button that makes it. */
export function WhatMustChange({ topic }: { readonly topic: Topic }) {
  const plan = useBench((state) => state.plan);
  const search = useSweep(plan, 'levers', topic);
  const { answer } = search;
  return (
    <>
      <SearchProgress
        of={search}
        label="Trying every lever"
        share={search.isCurrent ? (search.items.at(-1)?.done ?? 0) : 0}
      />
      {answer && (search.isCurrent || answer.stops.length > 0) && (
        <div className={search.isCurrent ? undefined : 'is-late'} aria-busy={!search.isCurrent}>
          <Answer answer={answer} isCurrent={search.isCurrent} />
        </div>
      )}
    </>
  );
}

function Answer({ answer, isCurrent }: { readonly answer: LeverAnswer; readonly isCurrent: boolean }) {
  const options = useDisplayOptions();
  const format = useFormat();
  const isPreviewing = useBench((state) => state.preview !== null);
  const { topic, stops, found, short } = answer;
  if (stops.length === 0)
    return (
      <p className="lede">
        {topic === 'signal'
          ? 'The wiring fits what is there: nothing must change.'
          : 'There are panels enough: nothing must change.'}
        {isPreviewing && ' This is said of the plan as it stands; keep the preview to have it judged.'}
      </p>
    );
  return (
    <>
      <ul className="stops">
        {stops.map((check) => (
          <li key={check.id}>{formatSentence(check, options)}</li>
        ))}
      </ul>
      {found.length > 0 && (
        <FigureTable
          caption="What makes it fit"
          columns={columnsOf(format, isCurrent)}
          rows={found}
          keyOf={({ id }) => id}
        />
      )}
      {short.length > 0 && (
        <p className="lede">
          {found.length === 0 ? 'No change alone makes it fit. ' : ''}
          Not enough alone: {short.map(({ name }) => name.toLowerCase()).join(', ')}.
        </p>
      )}
    </>
  );
}

function columnsOf(format: Format, isCurrent: boolean): readonly FigureColumn<LeverFound>[] {
  return [
    { key: 'name', title: 'Change', cell: ({ name }) => name },
    { key: 'step', title: 'From and to', cell: ({ step }) => changeWords(step, format), words: true },
    { key: 'cost', title: 'Cost', cell: (lever) => costWords(lever, format) },
    { key: 'apply', title: 'Apply', cell: (lever) => <ApplyButton lever={lever} isCurrent={isCurrent} /> },
  ];
}

function ApplyButton({ lever, isCurrent }: { readonly lever: LeverFound; readonly isCurrent: boolean }) {
  const { store } = useBenchStore();
  const { dispatch } = useActions();
  const say = useSay();
  const { name, step } = lever;
  return (
    <Button
      small
      disabled={!isCurrent}
      aria-label={`Apply: ${name}`}
      onClick={() => {
        const label = labelCommand(store.getState().plan, step.command);
        const outcome = dispatch(step.command);
        say('refused' in outcome ? outcome.refused : `Done: ${label}. Undo takes it back.`);
      }}
    >
      Apply
    </Button>
  );
}
