import { useCallback, useEffect, useRef, useState } from 'react';

export interface Sweep<Item, Answer> {
  readonly items: readonly Item[];
  readonly answer: Answer | null;
  readonly running: boolean;
  readonly start: (search: () => Generator<Item, Answer>) => void;
  readonly stop: () => void;
}

/** Longest stretch of a search between two looks at the screen. */
const stretchMs = 40;

/** Runs a long search in stretches, so that typing goes on beside it: what it yielded so far, its answer, and a way to stop it. */
export function useSweep<Item, Answer>(): Sweep<Item, Answer> {
  const [state, setState] = useState<{ items: readonly Item[]; answer: Answer | null; running: boolean }>({
    items: [],
    answer: null,
    running: false,
  });
  const turn = useRef(0);

  const stop = useCallback(() => {
    turn.current += 1;
    setState((now) => ({ ...now, running: false }));
  }, []);

  const start = useCallback((search: () => Generator<Item, Answer>) => {
    turn.current += 1;
    const mine = turn.current;
    const items: Item[] = [];
    const steps = search();
    setState({ items: [], answer: null, running: true });
    const work = () => {
      if (turn.current !== mine) return;
      const until = performance.now() + stretchMs;
      let step = steps.next();
      while (!step.done && performance.now() < until) {
        items.push(step.value);
        step = steps.next();
      }
      if (step.done) {
        setState({ items: [...items], answer: step.value, running: false });
        return;
      }
      items.push(step.value);
      setState({ items: [...items], answer: null, running: true });
      setTimeout(work, 0);
    };
    setTimeout(work, 0);
  }, []);

  useEffect(
    () => () => {
      turn.current += 1;
    },
    [],
  );
  return { ...state, start, stop };
}
