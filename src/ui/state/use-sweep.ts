import { useCallback, useEffect, useRef, useState } from 'react';
import type { Plan } from '../../plan/plan';
import { startSweepWorker } from './start-sweep-worker';
import { createSweepLine } from './sweep-line';
import type { SweepName, Sweeps } from './sweeps';

export interface Sweep<Name extends SweepName> {
  readonly items: readonly Sweeps[Name]['item'][];
  readonly answer: Sweeps[Name]['answer'] | null;
  /** False while items and answer are those of an earlier plan or question. */
  readonly isCurrent: boolean;
  readonly isRunning: boolean;
  readonly wasStopped: boolean;
  /** Why the program could not search; null where it could. */
  readonly failure: string | null;
  readonly stop: () => void;
  /** Starts anew what was stopped or failed. */
  readonly again: () => void;
}

/** Rest after a change of the plan before a search starts anew, so that typing and arrow keys do not each start one. */
const restMs = 250;

/** One worker for all searches of the page; kept here, since a collected proxy would drop calls that are under way. */
const line = createSweepLine(startSweepWorker);

type State<Name extends SweepName> = Pick<Sweep<Name>, 'items' | 'answer' | 'failure'> & {
  readonly plan: Plan | null;
  readonly asked: Sweeps[Name]['asked'] | undefined;
  readonly ended: 'not yet' | 'by itself' | 'stopped' | 'failed';
};

/**
 * A search over the plan in the worker: it starts by itself, anew after each change, and stops when the component goes.
 * `asked` is compared by identity; while it is undefined nothing is searched.
 */
export function useSweep<Name extends SweepName>(
  plan: Plan,
  name: Name,
  asked: Sweeps[Name]['asked'] | undefined,
): Sweep<Name> {
  const nothing: State<Name> = {
    items: [],
    answer: null,
    failure: null,
    plan: null,
    asked: undefined,
    ended: 'not yet',
  };
  const [state, setState] = useState(nothing);
  const controls = useRef({ stop: () => {}, again: () => {} });
  const lastPlan = useRef(plan);

  useEffect(() => {
    const isFresh = lastPlan.current !== plan;
    lastPlan.current = plan;
    if (asked === undefined) return;
    let items: readonly Sweeps[Name]['item'][] = [];
    const show = (news: Partial<State<Name>>) =>
      setState({ items, answer: null, failure: null, plan, asked, ended: 'not yet', ...news });
    const start = () =>
      line.start(plan, name, asked, {
        onItems(more) {
          items = [...items, ...more];
          show({});
        },
        onAnswer: (answer) => show({ answer, ended: 'by itself' }),
        onFailure: (failure) => show({ failure, ended: 'failed' }),
      });
    let stopLine: () => void = () => undefined;
    const begin = () => {
      stopLine = start();
    };
    const timer = setTimeout(begin, isFresh ? restMs : 0);
    const leave = () => {
      clearTimeout(timer);
      stopLine();
    };
    controls.current = {
      stop() {
        leave();
        show({ ended: 'stopped' });
      },
      again() {
        leave();
        items = [];
        show({});
        begin();
      },
    };
    return leave;
  }, [plan, name, asked]);

  const stop = useCallback(() => controls.current.stop(), []);
  const again = useCallback(() => controls.current.again(), []);
  const isCurrent = asked !== undefined && state.plan === plan && state.asked === asked;
  return {
    items: state.items,
    answer: state.answer,
    isCurrent,
    isRunning: !isCurrent || state.ended === 'not yet',
    wasStopped: isCurrent && state.ended === 'stopped',
    failure: isCurrent ? state.failure : null,
    stop,
    again,
  };
}
