/** The row that a key leads to in a list of `count` rows, kept within it; null for a key that does not move. */
export function rowMove(key: string, from: number, count: number, pageRows: number): number | null {
  const moves: Readonly<Record<string, number>> = {
    ArrowDown: from + 1,
    ArrowUp: from - 1,
    PageDown: from + pageRows,
    PageUp: from - pageRows,
    Home: 0,
    End: count - 1,
  };
  const to = Object.hasOwn(moves, key) ? moves[key] : undefined;
  return to === undefined || count === 0 ? null : Math.min(count - 1, Math.max(0, to));
}
