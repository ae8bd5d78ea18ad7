/**
 * Distinct figures among runs: two runs are the same figure when they take the same steps from the entry on, wherever they
 * begin. A mirrored or turned run is another figure, since a crew that wires from memory turns the same way in every block.
 */
export function countFigures(rows: number, order: Int32Array, start: Int32Array): number {
  const figures = new Set<string>();
  for (let run = 0; run + 1 < start.length; run++) {
    let steps = '';
    // Runs of equal steps are written once with their length: 'U8' for eight panels further up.
    let last = 0;
    let length = 0;
    for (let at = start[run]! + 1; at < start[run + 1]!; at++) {
      const step = order[at]! - order[at - 1]!;
      if (step === last) {
        length++;
        continue;
      }
      if (length > 0) steps += `${nameOf(last, rows)}${length}`;
      last = step;
      length = 1;
    }
    if (length > 0) steps += `${nameOf(last, rows)}${length}`;
    figures.add(steps);
  }
  return figures.size;
}

function nameOf(step: number, rows: number): string {
  if (step === rows) return 'R';
  if (step === -rows) return 'L';
  return step > 0 ? 'U' : 'D';
}
