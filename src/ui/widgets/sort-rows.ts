export interface SortOrder {
  readonly key: string;
  readonly falling: boolean;
}

const collator = new Intl.Collator('en', { numeric: true });

function compare(one: number | string, other: number | string): number {
  return typeof one === 'number' && typeof other === 'number'
    ? one - other
    : collator.compare(String(one), String(other));
}

/** Row numbers in order of what they sort by; rows that are equal keep their order. Words with figures sort by them: R9 before R10. */
export function sortRows(count: number, sortBy: (row: number) => number | string, falling: boolean): Uint32Array {
  const by = Array.from({ length: count }, (_, row) => sortBy(row));
  const rows = Uint32Array.from({ length: count }, (_, row) => row);
  return rows.sort((one, other) => {
    const order = compare(by[one]!, by[other]!);
    return (falling ? -order : order) || one - other;
  });
}
