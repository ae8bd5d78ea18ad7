import type { Path } from '../../plan/commands/path';
import { pathText } from '../../plan/commands/path-text';
import { fieldAt } from './field-at';
import { useActions } from './use-bench';
import { usePlan } from './use-plan';

export interface PlanField<Value> {
  readonly value: Value;
  /** Path of the field as people read it; ties the input to checks, undo and links. */
  readonly field: string;
  /** Sets the field as one undo step; a reason where the value is refused. */
  readonly onCommit: (value: Value) => string | null;
}

/** One field of the plan bound to an input. The value at the path must be of the type named. */
export function usePlanField<Value>(path: Path, label: string): PlanField<Value> {
  const actions = useActions();
  const field = pathText(path);
  const value = usePlan((plan) => fieldAt(plan, path)) as Value;
  return {
    value,
    field,
    onCommit: (next) => {
      const outcome = actions.setField(path, next, label, { mergeKey: `field ${field}` });
      return 'refused' in outcome ? outcome.refused : null;
    },
  };
}
