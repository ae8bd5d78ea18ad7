import { useId } from 'react';

export interface SwitchFieldProps {
  readonly label: string;
  readonly value: boolean;
  readonly onCommit: (value: boolean) => string | null;
  readonly field?: string | undefined;
  readonly isDisabled?: boolean;
}

/** Yes or no. */
export function SwitchField({ label, value, onCommit, field, isDisabled = false }: SwitchFieldProps) {
  const id = useId();
  return (
    <div className="field" data-field={field}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="checkbox"
        role="switch"
        aria-checked={value}
        checked={value}
        disabled={isDisabled}
        onChange={(event) => onCommit(event.target.checked)}
      />
    </div>
  );
}
