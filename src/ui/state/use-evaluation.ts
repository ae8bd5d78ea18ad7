import type { Evaluation } from '../../calc/evaluation';
import { selectShownEvaluation } from './selectors';
import { useBench } from './use-bench';

/** One narrow part of what follows from the shown plan: a chapter, its results, one figure. The selector gives what the
 *  evaluation holds or a primitive. Only below the frame's leaves, which stand once there is an evaluation. */
export function useEvaluation<Part>(selector: (evaluation: Evaluation) => Part): Part {
  return useBench((state) => {
    const evaluation = selectShownEvaluation(state);
    if (!evaluation) throw new Error('a leaf of the bench stands before the first evaluation');
    return selector(evaluation);
  });
}
