import { Button } from './Button';

export interface SegmentChoiceProps<Value extends string> {
  /** What the choice is called where it is not seen. */
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly { readonly value: Value; readonly label: string }[];
  readonly onChoose: (value: Value) => void;
}

/** Few choices side by side, of which one holds. */
export function SegmentChoice<Value extends string>({ label, value, choices, onChoose }: SegmentChoiceProps<Value>) {
  return (
    <fieldset className="segments" aria-label={label}>
      {choices.map((choice) => (
        <Button
          key={choice.value}
          look="plain"
          aria-pressed={choice.value === value}
          onClick={() => onChoose(choice.value)}
        >
          {choice.label}
        </Button>
      ))}
    </fieldset>
  );
}
