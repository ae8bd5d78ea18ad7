import { useId } from 'react';

export interface DateFieldProps {
  readonly label: string;
  /** '2026-11-25', or empty. */
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string;
}

/** A day on the calendar, typed or chosen as the browser has it. */
export function DateField({ label, value, onChange, hint }: DateFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="field-box">
        <input
          id={id}
          type="date"
          value={value}
          aria-describedby={hint ? `${id}-hint` : undefined}
          onChange={(event) => onChange(event.target.value)}
        />
      </span>
      {hint && (
        <span id={`${id}-hint`} className="field-note">
          {hint}
        </span>
      )}
    </div>
  );
}
