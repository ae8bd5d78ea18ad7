import type { Path } from '../../../plan/commands/path';
import { usePlanField } from '../../state/use-plan-field';
import { UnitField } from '../../widgets/UnitField';

interface MillisecondsFieldProps {
  readonly path: Path;
  readonly label: string;
  readonly least?: number;
  /** Words for a time nobody stated; left out: a time must stand. */
  readonly absent?: string;
}

/** A time of the plan that is kept in milliseconds. */
export function MillisecondsField({ path, label, ...rest }: MillisecondsFieldProps) {
  const { value, field, onCommit } = usePlanField<number | null>(path, label);
  return (
    <UnitField<number | null>
      label={label}
      field={field}
      value={value === null ? null : value / 1000}
      unit="s"
      plain="ms"
      step={0.001}
      onCommit={(seconds) => onCommit(seconds === null ? null : Math.round(seconds * 1e6) / 1000)}
      {...rest}
    />
  );
}
