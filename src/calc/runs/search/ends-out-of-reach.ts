/**
 * Ends of a run that stand above reach, its better end being the entry. `outOfReach` is 1 where a cell is too high.
 * With a return both ends count (a run of one panel has one end), without it the entry alone.
 */
export function endsOutOfReach(outOfReach: Uint8Array, first: number, last: number, bothEnds: boolean): number {
  const highFirst = outOfReach[first]!;
  const highLast = outOfReach[last]!;
  if (!bothEnds) return highFirst & highLast;
  return first === last ? highFirst : highFirst + highLast;
}
