/** What a typed text means, or why it means nothing here. */
export type Reading<Value> = { readonly value: Value } | { readonly refused: string };

/** The text in a field between two commits. */
export interface FieldDraft {
  readonly text: string;
  /** True while the text was typed and not yet committed. */
  readonly typed: boolean;
  /** Why the last commit was refused; gone with the next key. */
  readonly refusal: string | null;
}

/** The field as it stands when nobody types: its value written out. */
export function restDraft(text: string): FieldDraft {
  return { text, typed: false, refusal: null };
}

export function typeDraft(text: string): FieldDraft {
  return { text, typed: true, refusal: null };
}

/** What committing a draft does: nothing, keep the text with a refusal, or hand a value on. */
export function commitDraft<Value>(
  draft: FieldDraft,
  read: (text: string) => Reading<Value>,
): { readonly draft: FieldDraft } | { readonly value: Value } | null {
  if (!draft.typed) return null;
  const reading = read(draft.text);
  return 'refused' in reading ? { draft: { ...draft, refusal: reading.refused } } : reading;
}

/** The value from which an arrow key steps: what is typed if it can be read, else what the field holds. */
export function stepBase<Value>(draft: FieldDraft, held: Value, read: (text: string) => Reading<Value>): Value {
  if (!draft.typed) return held;
  const reading = read(draft.text);
  return 'value' in reading ? reading.value : held;
}
