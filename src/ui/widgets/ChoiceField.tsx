import { useId } from 'react';

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly group?: string;
}

export interface ChoiceFieldProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly Choice<Value>[];
  readonly onCommit: (value: Value) => string | null;
  readonly hint?: string | undefined;
  readonly field?: string | undefined;
  /** True for choices whose words are long. */
  readonly long?: boolean;
  readonly isDisabled?: boolean;
}

/** One of a few choices. A value that is none of them (an item that was removed) is shown as missing, not swapped. */
export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>) {
  const { label, value, choices, onCommit, hint, field, long = false } = props;
  const id = useId();
  const groups = [...new Set(choices.map((choice) => choice.group))];
  const known = choices.some((choice) => choice.value === value);
  return (
    <div className={long ? 'field long' : 'field'} data-field={field}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        disabled={props.isDisabled}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onChange={(event) => onCommit(event.target.value as Value)}
      >
        {!known && <option value={value}>missing: {value}</option>}
        {groups.map((group) => {
          const options = choices
            .filter((choice) => choice.group === group)
            .map((choice) => (
              <option key={choice.value} value={choice.value}>
                {choice.label}
              </option>
            ));
          return group === undefined ? (
            options
          ) : (
            <optgroup key={group} label={group}>
              {options}
            </optgroup>
          );
        })}
      </select>
      {hint && (
        <span id={`${id}-hint`} className="field-note">
          {hint}
        </span>
      )}
    </div>
  );
}
