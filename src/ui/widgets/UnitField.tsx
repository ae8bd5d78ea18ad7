import { formatQuantity } from '../../units/format-quantity';
import { parseQuantity } from '../../units/parse-quantity';
import type { Unit } from '../../units/unit';
import { DraftField } from './DraftField';
import { useDisplayOptions } from './display-context';
import { editableQuantity } from './editable-quantity';
import type { Reading } from './field-draft';
import { restingText } from './resting-text';
import { stepNumber } from './step-number';
import { usualStep } from './usual-step';

export interface UnitFieldProps<Value extends number | null> {
  readonly label: string;
  /** In `unit`; null where nobody stated it. */
  readonly value: Value;
  readonly unit: Unit;
  readonly onCommit: (value: Value) => string | null;
  /** Spelling that a bare number stands for, where the unit's own would be odd: 'mm' for the depth of a panel. */
  readonly plain?: string;
  readonly least?: number;
  readonly most?: number;
  /** What an arrow key adds, in `unit`; Shift takes ten. */
  readonly step?: number;
  /** Words for a figure nobody stated; leaving the field empty then sets null. Left out: a figure must stand. */
  readonly absent?: string;
  readonly hint?: string | undefined;
  readonly field?: string | undefined;
  readonly isDisabled?: boolean;
}

/** A figure with its unit. Takes any unit of its kind (`24'`, `7.3 m`, `500mm`) and says why it takes nothing else. */
export function UnitField<Value extends number | null>(props: UnitFieldProps<Value>) {
  const { value, unit, plain, absent, least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = props;
  const options = useDisplayOptions();
  const step = props.step ?? usualStep(unit, options, plain);
  const textOf = (figure: number | null) =>
    figure === null ? '' : editableQuantity(figure, unit, options, plain).text;
  const suffix = editableQuantity(value ?? 0, unit, options, plain).suffix;
  /** A length between the marks of a tape reads to the sixteenth of an inch until one edits it; thousands stand apart. */
  const shorten = (figure: number | null) => {
    const exact = textOf(figure);
    const isLong = unit === 'mm' && suffix === '' && exact.includes('.') && Math.abs(figure ?? 0) >= 25.4;
    return isLong ? `≈ ${formatQuantity(figure ?? 0, unit, options, 1)}` : restingText(exact);
  };

  function read(text: string): Reading<number | null> {
    if (text.trim() === '' && absent !== undefined) return { value: null };
    const parsed = parseQuantity(text, unit, options, plain);
    if ('refused' in parsed) return parsed;
    if (parsed.value < least) return { refused: `At least ${formatQuantity(least, unit, options)} belongs here.` };
    if (parsed.value > most) return { refused: `At most ${formatQuantity(most, unit, options)} belongs here.` };
    return parsed;
  }

  return (
    <DraftField<number | null>
      label={props.label}
      value={value}
      format={textOf}
      shorten={shorten}
      read={read}
      // `read` gives null only where `absent` allows it, which is where Value holds null.
      onCommit={(next) => props.onCommit(next as Value)}
      explain={(next) => (next === null ? (absent ?? '') : formatQuantity(next, unit, options))}
      spin={{
        now: (figure) => figure,
        least,
        most,
        step: (figure, direction, tenfold) => {
          const from = figure ?? (Number.isFinite(least) ? least : 0);
          const next = stepNumber(from, direction, tenfold, { step, least, most });
          return unit === 'mm' ? Math.round(next * 1000) / 1000 : next;
        },
      }}
      {...(unit === 'money' ? { unit: options.currency } : suffix === '' ? {} : { unit: suffix })}
      {...(absent === undefined ? {} : { placeholder: absent })}
      hint={props.hint}
      field={props.field}
      isDisabled={props.isDisabled ?? false}
    />
  );
}
