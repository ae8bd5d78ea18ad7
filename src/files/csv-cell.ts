import type { Cell } from '../sheets/schedule';
import { plainNumber } from './plain-number';

/** A cell as CSV has it: words as they are, figures plain, nothing for null. */
export function csvCell(cell: Cell): string {
  if (typeof cell === 'string') return csvWords(cell);
  return cell === null ? '' : String(plainNumber(cell) ?? '');
}

/** Words that a spreadsheet would take for a formula begin with an apostrophe. Source: OWASP, CSV Injection. */
export function csvWords(words: string): string {
  return /^[=+\-@\t\r\n＝＋－＠]/.test(words) ? `'${words}` : words;
}
