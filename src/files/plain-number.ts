/** A figure without the last digits that binary fractions add: 12 significant digits. Null where it is no number. */
export function plainNumber(value: number): number | null {
  return Number.isFinite(value) ? Number(value.toPrecision(12)) : null;
}
