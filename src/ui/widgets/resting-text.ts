/** Digits that a field has room for. */
const mostDigits = 8;

/**
 * An exact figure as it reads while nobody edits it: thousands stand apart (SI Brochure, 9th edition, 5.4.4, from memory),
 * and what is too long for a field is rounded and says so. What is no plain decimal figure stays as it is.
 */
export function restingText(exact: string): string {
  const parts = /^(-?)(\d+)(\.\d+)?$/.exec(exact);
  if (parts === null || Math.abs(Number(exact)) < 0.001) return exact;
  const [, sign = '', whole = '', fraction = ''] = parts;
  const room = Math.max(0, mostDigits - whole.length - 1);
  const isLong = fraction.length - 1 > room;
  const shown = isLong ? Math.abs(Number(exact)).toFixed(Math.min(room, 3)) : `${whole}${fraction}`;
  const [units = '', rest] = shown.split('.');
  const grouped = units.length < 5 ? units : units.replace(/\B(?=(\d{3})+$)/g, '\u202f');
  return `${isLong ? '≈ ' : ''}${sign}${grouped}${rest === undefined ? '' : `.${rest}`}`;
}
