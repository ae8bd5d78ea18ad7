import type { Path } from '../../../plan/commands/path';
import { usePlanField } from '../../state/use-plan-field';
import { TextField } from '../../widgets/TextField';

/** Joint angles that the lock takes, as one line of numbers in degrees. */
export function LockSteps({ path }: { readonly path: Path }) {
  const { value, field, onCommit } = usePlanField<readonly number[]>(path, 'lock steps');
  const commit = (text: string) => {
    const steps = text
      .split(/[;\s]+/)
      .filter(Boolean)
      .map((word) => Number(word.replace('°', '')));
    return steps.every(Number.isFinite) ? onCommit(steps) : 'Degrees, with a space between: -5 -2.5 0 2.5 5';
  };
  return (
    <TextField
      label="Lock steps, degrees"
      field={field}
      value={value.join(' ')}
      onCommit={commit}
      hint="positive is concave"
    />
  );
}
