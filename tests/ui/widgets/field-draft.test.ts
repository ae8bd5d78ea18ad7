import { expect, test } from 'vitest';
import { commitDraft, type Reading, restDraft, stepBase, typeDraft } from '../../../src/ui/widgets/field-draft';

const read = (text: string): Reading<number> =>
  /^\d+$/.test(text) ? { value: Number(text) } : { refused: 'A number belongs here.' };

test('commitDraft of what nobody typed does nothing', () => {
  expect(commitDraft(restDraft('12'), read)).toBeNull();
});

test('commitDraft of what can be read hands the value on', () => {
  expect(commitDraft(typeDraft('24'), read)).toEqual({ value: 24 });
});

test('commitDraft of what cannot be read keeps the text and says why; the next key takes the reason away', () => {
  const outcome = commitDraft(typeDraft('2x'), read);
  expect(outcome).toEqual({ draft: { text: '2x', typed: true, refusal: 'A number belongs here.' } });
  expect(typeDraft('2').refusal).toBeNull();
});

test('stepBase steps from what is typed where it can be read, else from what is held', () => {
  expect(stepBase(typeDraft('24'), 10, read)).toBe(24);
  expect(stepBase(typeDraft('2x'), 10, read)).toBe(10);
  expect(stepBase(restDraft('99'), 10, read)).toBe(10);
});
