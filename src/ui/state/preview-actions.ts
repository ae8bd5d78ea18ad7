import type { StoreApi } from 'zustand/vanilla';
import { applyCommand, labelCommand } from '../../plan/commands';
import type { BenchActions, BenchState } from './bench-state';
import { createEvaluationHost, type EvaluationHostParts } from './evaluation-host';
import { whyRefused } from './why-refused';

/** Looking at a change without making it: the previewed plan is evaluated apart, so that the screen's memos stay whole. */
export function createPreviewActions(
  { getState, setState }: StoreApi<BenchState>,
  parts: Omit<EvaluationHostParts, 'onEvaluated'>,
  dispatch: BenchActions['dispatch'],
): Pick<BenchActions, 'startPreview' | 'keepPreview' | 'endPreview'> {
  const host = createEvaluationHost({
    ...parts,
    onEvaluated(evaluated) {
      const { preview } = getState();
      if (!preview) return;
      setState({ preview: 'failure' in evaluated ? null : { ...preview, evaluation: evaluated.evaluation } });
    },
  });
  return {
    startPreview(command) {
      const { plan } = getState();
      const refused = whyRefused(getState(), command.name);
      if (refused !== null) return { refused };
      const outcome = applyCommand(plan, command);
      if ('refused' in outcome) return outcome;
      const evaluated = host.evaluate(outcome.plan);
      if (evaluated && 'failure' in evaluated) return { refused: evaluated.failure };
      const evaluation = evaluated?.evaluation ?? null;
      setState({ preview: { label: labelCommand(plan, command), command, plan: outcome.plan, evaluation } });
      return { done: true };
    },
    keepPreview() {
      const { preview } = getState();
      setState({ preview: null });
      if (preview) dispatch(preview.command);
    },
    endPreview: () => setState({ preview: null }),
  };
}
