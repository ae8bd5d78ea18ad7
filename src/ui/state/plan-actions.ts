import { applyCommand, labelCommand } from '../../plan/commands';
import type { Plan } from '../../plan/plan';
import type { BenchActions, BenchState } from './bench-state';
import { type HistoryStep, recordStep, stepBack, stepForward } from './history';
import { placeOfCommand } from './place-of-command';
import { whyRefused } from './why-refused';

export interface PlanActionsParts {
  readonly getState: () => BenchState;
  /** Puts a plan on the bench together with what else changes. */
  readonly show: (plan: Plan, change: Partial<BenchState>) => void;
  readonly now: () => number;
}

/** Longest pause inside a burst of typing or arrow keys. */
const burstMs = 2000;

function backTo({ place }: HistoryStep, { asked }: BenchState): Partial<BenchState> {
  if (place.field === null) return { page: place.page };
  return { page: place.page, asked: { field: place.field, serial: (asked?.serial ?? 0) + 1 } };
}

/** Changes of the plan: the one gateway through which every write goes, each labelled and undoable. */
export function createPlanActions({
  getState,
  show,
  now,
}: PlanActionsParts): Pick<BenchActions, 'dispatch' | 'setField' | 'undo' | 'redo'> {
  const dispatch: BenchActions['dispatch'] = (command, options = {}) => {
    const { plan, history, page } = getState();
    const refused = whyRefused(getState(), command.name);
    if (refused !== null) return { refused };
    const outcome = applyCommand(plan, command);
    if ('refused' in outcome) return outcome;
    if (outcome.plan === plan) return { done: true };
    const step: HistoryStep = {
      label: labelCommand(plan, command),
      before: plan,
      after: outcome.plan,
      place: options.place ?? placeOfCommand(command, page),
      mergeKey: options.mergeKey ?? null,
      atMs: now(),
    };
    show(outcome.plan, { history: recordStep(history, step, options.mergeWithinMs ?? burstMs) });
    return { done: true };
  };
  return {
    dispatch,
    setField(path, value, label, options) {
      const args = label === undefined ? { fields: [{ path, value }] } : { fields: [{ path, value }], label };
      return dispatch({ name: 'set-fields', args }, options);
    },
    undo() {
      const state = getState();
      const back = state.follows ? null : stepBack(state.history);
      if (back) show(back.step.before, { history: back.history, ...backTo(back.step, state) });
    },
    redo() {
      const state = getState();
      const forward = state.follows ? null : stepForward(state.history);
      if (forward) show(forward.step.after, { history: forward.history, ...backTo(forward.step, state) });
    },
  };
}
