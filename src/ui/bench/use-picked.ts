import { useMemo } from 'react';
import { panelsOn } from '../../calc/faults/panels-on';
import type { Picked } from '../../sheets/picked-panels';
import { faultModelOf } from '../state/fault-model-of';
import { useBench } from '../state/use-bench';
import { useEvaluation } from '../state/use-evaluation';

/** What is picked, as the drawings take it: a part of the wiring by the panels on it. */
export function usePicked(): Picked | null {
  const evaluation = useEvaluation((all) => all);
  const selection = useBench((state) => state.selection);
  return useMemo(() => {
    if (selection?.kind !== 'part') return selection;
    const panels = panelsOn(faultModelOf(evaluation), { kind: selection.part, index: selection.index });
    return { kind: 'panels', panels };
  }, [evaluation, selection]);
}
