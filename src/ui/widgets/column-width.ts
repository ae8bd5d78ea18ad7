/** Width of one digit of the figures' face and of one letter of the headings', as set in the style sheets; in pixels. */
const digitPx = 7.5;
const letterPx = 7;
/** What stands beside the words of a cell, and beside a heading that may carry a mark of its order. */
const besideCellPx = 20;
const besideTitlePx = 28;
const leastPx = 56;
const mostPx = 230;

/** Width of a column that shows its heading and its cells whole, within what leaves room for the others; in pixels. */
export function columnWidthPx(title: string, texts: readonly string[]): number {
  const longest = texts.reduce((most, text) => Math.max(most, text.length), 0);
  const needed = Math.max(title.length * letterPx + besideTitlePx, Math.ceil(longest * digitPx) + besideCellPx);
  return Math.min(mostPx, Math.max(leastPx, needed));
}
