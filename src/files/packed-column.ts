/**
 * A column of a table, short where it runs regularly: a text, or by how much each of the numbers in the text before it has
 * grown, or how often the last such step is taken again.
 */
export type PackedColumn = readonly (string | readonly number[] | number)[];

/** No list of a plan is longer. */
const mostEntries = 250_000;
/** Longer numbers are part of the text: they would not come back to the digit. */
const parts = /\d{1,9}/g;

export function packColumn(texts: readonly string[]): PackedColumn {
  const packed: (string | readonly number[] | number)[] = [];
  let before = '';
  let step: readonly number[] | null = null;
  for (const text of texts) {
    const last = packed.at(-1);
    const next = stepBetween(before, text);
    if (next === null) packed.push(text);
    else if (step === null || next.join() !== step.join()) packed.push(next);
    else if (typeof last === 'number') packed[packed.length - 1] = last + 1;
    else packed.push(1);
    step = next;
    before = text;
  }
  return packed;
}

/** The texts of such a column; null where it is none. */
export function unpackColumn(packed: unknown): readonly string[] | null {
  if (!Array.isArray(packed)) return null;
  const texts: string[] = [];
  let step: readonly number[] | null = null;
  for (const entry of packed as readonly unknown[]) {
    if (typeof entry === 'string') {
      texts.push(entry);
      step = null;
      continue;
    }
    const times: unknown = typeof entry === 'number' ? entry : 1;
    if (Array.isArray(entry)) step = entry as readonly number[];
    if (step === null || !Number.isInteger(times) || Number(times) < 1) return null;
    if (texts.length + Number(times) > mostEntries) return null;
    for (let time = 0; time < Number(times); time++) {
      const text: string | null = texts.length === 0 ? null : stepOn(texts.at(-1)!, step);
      if (text === null) return null;
      texts.push(text);
    }
  }
  return texts;
}

/** By how much each number of a text has grown in the next one; null where that does not lead to it. */
function stepBetween(before: string, text: string): readonly number[] | null {
  const [from, to] = [before.match(parts), text.match(parts)];
  if (from === null || to === null || from.length !== to.length) return null;
  const step = to.map((digits, i) => Number(digits) - Number(from[i]));
  return stepOn(before, step) === text ? step : null;
}

/** The text with each of its numbers grown; digits that began with 0 keep their count. Null where there is none. */
function stepOn(text: string, step: readonly number[]): string | null {
  let place = 0;
  let isWhole = true;
  const grown = text.replace(parts, (digits) => {
    const by = step[place++];
    const number = Number(digits) + Number(by);
    if (!Number.isInteger(by) || number < 0) isWhole = false;
    return String(number).padStart(digits.startsWith('0') ? digits.length : 0, '0');
  });
  return isWhole && place === step.length && place > 0 ? grown : null;
}
