import { useEffect, useMemo } from 'react';
import { createEvaluator } from '../../../calc/evaluate';
import { findLevers, type LeverProgress } from '../../../calc/levers/find-levers';
import type { LeverAnswer, LeverFound, Topic } from '../../../calc/levers/lever';
import { formatSentence } from '../../../units/format-sentence';
import { useActions, useBench } from '../../state/use-bench';
import { useSweep } from '../../state/use-sweep';
import { Button } from '../../widgets/Button';
import { useDisplayOptions } from '../../widgets/display-context';
import { EmptyState } from '../../widgets/EmptyState';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { ProgressBar } from '../../widgets/ProgressBar';
import { type Format, useFormat } from '../../widgets/use-format';

function changeWords({ step }: LeverFound, format: Format): string {
  if (step.choice !== undefined) return step.choice;
  return `${format(step.from.value, step.from.unit)} to ${format(step.to.value, step.to.unit)}`;
}

function costWords({ cost, panelsLost }: LeverFound, format: Format): string {
  const money = cost === null ? 'price not stated' : cost === 0 ? 'buys nothing' : format(cost, 'money');
  return panelsLost > 0 ? `${money}, ${panelsLost} panels fewer` : money;
}

/** Every lever alone: the least change that makes the plan fit, what it costs, and a button that makes it. */
export function WhatMustChange({ topic }: { readonly topic: Topic }) {
  const plan = useBench((state) => state.plan);
  const { dispatch } = useActions();
  const format = useFormat();
  const options = useDisplayOptions();
  const sweep = useSweep<LeverProgress, LeverAnswer>();
  const { start, stop, answer } = sweep;
  const evaluator = useMemo(() => createEvaluator(), []);

  useEffect(() => {
    start(() => findLevers(plan, topic, evaluator.evaluate));
    return stop;
  }, [plan, topic, evaluator, start, stop]);

  if (sweep.running)
    return <ProgressBar label="Trying every lever" share={sweep.items.at(-1)?.done ?? 0} onStop={stop} />;
  if (!answer) return <EmptyState title="The search was stopped." />;
  if (answer.stops.length === 0)
    return (
      <p className="lede">
        {topic === 'signal'
          ? 'The wiring fits what is there: nothing must change.'
          : 'There are panels enough: nothing must change.'}
      </p>
    );
  const columns: readonly FigureColumn<LeverFound>[] = [
    { key: 'name', title: 'Change', cell: ({ name }) => name },
    { key: 'step', title: 'From and to', cell: (lever) => changeWords(lever, format), words: true },
    { key: 'cost', title: 'Cost', cell: (lever) => costWords(lever, format) },
    {
      key: 'apply',
      title: 'Apply',
      cell: ({ name, step }) => (
        <Button small aria-label={`Apply: ${name}`} onClick={() => dispatch(step.command)}>
          Apply
        </Button>
      ),
    },
  ];
  return (
    <>
      <ul className="stops">
        {answer.stops.map((check) => (
          <li key={check.id}>{formatSentence(check, options)}</li>
        ))}
      </ul>
      {answer.found.length > 0 && (
        <FigureTable caption="What makes it fit" columns={columns} rows={answer.found} keyOf={({ id }) => id} />
      )}
      {answer.short.length > 0 && (
        <p className="lede">Not enough alone: {answer.short.map(({ name }) => name.toLowerCase()).join(', ')}.</p>
      )}
    </>
  );
}
