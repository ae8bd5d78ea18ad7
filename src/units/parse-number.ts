/** A number at the start of a text: its value and what stands behind it, or why it cannot be read. */
export type ParsedNumber =
  | { readonly value: number; readonly rest: string }
  | { readonly refused: string }
  /** No number begins here. */
  | undefined;

/**
 * Reads one unsigned number: '7.3', '7,3', '.5', '1/2', '6 1/2', '6-1/2', '650 000'. One comma is a decimal comma, except
 * where it may as well stand for thousands ('1,234'): that is refused, as are several of them and mixed forms.
 */
export function parseNumber(text: string): ParsedNumber {
  const fraction = /^(?:(\d+)(?: +|-))?(\d+)\/(\d+)/.exec(text);
  if (fraction !== null) {
    const [all, whole = '0', over, under] = fraction;
    if (Number(under) === 0) return { refused: 'Nothing can be divided by 0.' };
    return { value: Number(whole) + Number(over) / Number(under), rest: text.slice(all.length) };
  }
  const grouped = /^\d{1,3}(?: \d{3})+(?![\d ]*\d)(?:[.,]\d+)?/.exec(text);
  const typed = grouped?.[0] ?? /^[\d.,]*\d[.,]?/.exec(text)?.[0];
  if (typed === undefined) return undefined;
  const digits = typed.replaceAll(' ', '');
  const marks = digits.match(/[.,]/g) ?? [];
  if (marks.length > 1) return { refused: `${digits}: write one decimal mark, and none for thousands.` };
  if (grouped === null && /^[1-9]\d{0,2},\d{3}$/.test(digits)) {
    const plain = digits.replace(',', '');
    return { refused: `${digits} can be read in two ways: write ${plain} or ${digits.replace(',', '.')}.` };
  }
  return { value: Number(digits.replace(',', '.')), rest: text.slice(typed.length) };
}
