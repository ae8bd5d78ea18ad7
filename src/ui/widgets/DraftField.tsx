import { type KeyboardEvent, useState } from 'react';
import { Input, Label, Text, TextArea, TextField } from 'react-aria-components';
import { commitDraft, type FieldDraft, type Reading, restDraft, stepBase, typeDraft } from './field-draft';

export interface DraftFieldProps<Value> {
  readonly label: string;
  readonly value: Value;
  /** Writes a value so that reading it back gives the same value. */
  readonly format: (value: Value) => string;
  /** What stands in the field while nobody is in it, where that is shorter; left out: as it is edited. */
  readonly shorten?: (value: Value) => string;
  readonly read: (text: string) => Reading<Value>;
  /** Sets the value; a reason where it is refused. */
  readonly onCommit: (value: Value) => string | null;
  /** What the typed text means, in words, while one types. */
  readonly explain?: (value: Value) => string;
  /** Arrow keys; left out where there is nothing to step. */
  readonly spin?: {
    readonly now: (value: Value) => number | null;
    readonly least: number;
    readonly most: number;
    readonly step: (value: Value, direction: 1 | -1, tenfold: boolean) => Value;
  };
  readonly unit?: string;
  readonly placeholder?: string;
  readonly hint?: string | undefined;
  /** Path of what the field sets, so that checks, links and undo find it. */
  readonly field?: string | undefined;
  readonly look?: string | undefined;
  readonly lines?: 'one' | 'many';
  readonly isDisabled?: boolean | undefined;
  readonly inputMode?: 'text' | 'numeric' | 'decimal';
}

/** A field that keeps what is typed to itself until Enter, leaving or an arrow key commits it; Escape gives it up. */
export function DraftField<Value>(props: DraftFieldProps<Value>) {
  const { label, value, format, read, onCommit, explain, spin, lines = 'one' } = props;
  const held = format(value);
  const [isInside, setInside] = useState(false);
  const [typedDraft, setDraft] = useState<FieldDraft | null>(null);
  const draft = typedDraft ?? restDraft(held);
  const reading = draft.typed ? read(draft.text) : null;

  function hand(next: Value, text: string): void {
    const refusal = onCommit(next);
    setDraft(refusal === null ? null : { text, typed: true, refusal });
  }

  function commit(): void {
    const outcome = commitDraft(draft, read);
    if (!outcome) return;
    if ('draft' in outcome) setDraft(outcome.draft);
    else if (format(outcome.value) === held) setDraft(null);
    else hand(outcome.value, draft.text);
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'Enter' && lines === 'one') commit();
    else if (event.key === 'Escape' && draft.typed) {
      event.stopPropagation();
      setDraft(null);
    } else if (spin && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
      event.preventDefault();
      const direction = event.key === 'ArrowUp' ? 1 : -1;
      const next = spin.step(stepBase(draft, value, read), direction, event.shiftKey);
      hand(next, format(next));
    }
  }

  const now = spin?.now(value) ?? null;
  const spinning = spin
    ? {
        role: 'spinbutton',
        ...(Number.isFinite(spin.least) ? { 'aria-valuemin': spin.least } : {}),
        ...(Number.isFinite(spin.most) ? { 'aria-valuemax': spin.most } : {}),
        'aria-valuetext': held === '' ? (props.placeholder ?? 'empty') : held,
        ...(now === null ? {} : { 'aria-valuenow': now }),
      }
    : {};
  const note = noteOf(draft, reading, explain);
  const shared = { 'data-draft': draft.typed ? 'typed' : '', placeholder: props.placeholder ?? '', spellCheck: false };
  return (
    <TextField
      className={`field ${props.look ?? ''}`}
      data-field={props.field}
      data-typed={draft.typed ? '' : undefined}
      data-refused={draft.refusal === null ? undefined : ''}
      value={draft.typed || isInside || !props.shorten ? draft.text : props.shorten(value)}
      onChange={(text) => setDraft(typeDraft(text))}
      onFocus={() => setInside(true)}
      onBlur={() => {
        setInside(false);
        commit();
      }}
      isInvalid={draft.refusal !== null}
      isDisabled={props.isDisabled ?? false}
    >
      <Label>{label}</Label>
      <span className="field-box">
        {lines === 'many' ? (
          <TextArea {...shared} onKeyDown={onKeyDown} />
        ) : (
          <Input
            {...shared}
            {...spinning}
            onKeyDown={onKeyDown}
            autoComplete="off"
            inputMode={props.inputMode ?? 'text'}
          />
        )}
        {props.unit && <span className="field-unit">{props.unit}</span>}
      </span>
      {note && (
        <Text slot="description" className={note.refused ? 'field-note field-refusal' : 'field-note'} role={note.role}>
          {note.text}
        </Text>
      )}
      {!note && props.hint && (
        <Text slot="description" className="field-note">
          {props.hint}
        </Text>
      )}
    </TextField>
  );
}

interface Note {
  readonly text: string;
  readonly refused: boolean;
  readonly role?: 'alert';
}

function noteOf<Value>(
  draft: FieldDraft,
  reading: Reading<Value> | null,
  explain: ((value: Value) => string) | undefined,
): Note | null {
  if (draft.refusal !== null) return { text: draft.refusal, refused: true, role: 'alert' };
  if (!reading) return null;
  if ('refused' in reading) return draft.text.trim() === '' ? null : { text: reading.refused, refused: false };
  return explain ? { text: `= ${explain(reading.value)}`, refused: false } : null;
}
