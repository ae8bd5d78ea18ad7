import { useMemo } from 'react';
import type { Done } from '../drawings/Unrolled';
import { coveredBy, logOf } from '../state/log-of';
import { useBench } from '../state/use-bench';
import { useEvaluation } from '../state/use-evaluation';
import { usePlan } from '../state/use-plan';

/** Panels that the drawing hatches on the page of the log; null on other pages and where no step is chosen. */
export function useDonePanels(): Done | null {
  const evaluation = useEvaluation((all) => all);
  const log = usePlan((plan) => plan.log);
  const step = useBench((state) => (state.page === 'log' ? state.log.step : null));
  return useMemo(() => {
    if (step === null) return null;
    return { panels: coveredBy(logOf(evaluation, log), step, evaluation.surfaces.total), words: `hatched: ${step}` };
  }, [evaluation, log, step]);
}
