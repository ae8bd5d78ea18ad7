/** Rows of words as lines whose columns stand one below the other, two spaces apart; `r` sets a column's words to the right. */
export function alignColumns(rows: readonly (readonly string[])[], sides: readonly ('l' | 'r')[]): string[] {
  const widths = sides.map((_, column) => rows.reduce((most, row) => Math.max(most, (row[column] ?? '').length), 0));
  return rows.map((row) =>
    sides
      .map((side, column) => {
        const word = row[column] ?? '';
        const width = widths[column] ?? 0;
        return side === 'r' ? word.padStart(width) : word.padEnd(width);
      })
      .join('  ')
      .trimEnd(),
  );
}
