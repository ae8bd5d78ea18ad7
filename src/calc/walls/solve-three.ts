/**
 * Solves three linear equations by elimination with row pivots; `rows` holds the 3 x 4 augmented matrix and is used up.
 * Null where the system is singular to working accuracy.
 */
export function solveThree(rows: number[][]): readonly [number, number, number] | null {
  for (let k = 0; k < 3; k++) {
    let best = k;
    for (let r = k + 1; r < 3; r++) if (Math.abs(rows[r]![k]!) > Math.abs(rows[best]![k]!)) best = r;
    [rows[k], rows[best]] = [rows[best]!, rows[k]!];
    const pivot = rows[k]![k]!;
    if (!(Math.abs(pivot) > 1e-14)) return null;
    for (let r = k + 1; r < 3; r++) {
      const factor = rows[r]![k]! / pivot;
      for (let c = k; c < 4; c++) rows[r]![c]! -= factor * rows[k]![c]!;
    }
  }
  const z = rows[2]![3]! / rows[2]![2]!;
  const y = (rows[1]![3]! - rows[1]![2]! * z) / rows[1]![1]!;
  const x = (rows[0]![3]! - rows[0]![1]! * y - rows[0]![2]! * z) / rows[0]![0]!;
  return [x, y, z];
}
