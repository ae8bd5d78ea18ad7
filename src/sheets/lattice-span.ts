/** Columns or rows that follow on each other, by their names: 'C1 to C13', 'R5'. */
export function latticeSpan(letter: 'C' | 'R', first: number, count: number): string {
  return count === 1 ? `${letter}${first}` : `${letter}${first} to ${letter}${first + count - 1}`;
}
