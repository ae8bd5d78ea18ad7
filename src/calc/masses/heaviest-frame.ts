/** Kilograms on the heaviest support frame of a standing wall: one frame carries so many neighbouring columns, counted from the left. */
export function heaviestFrameKg(columnKg: Float64Array, columnsAFrame: number): number {
  let heaviest = 0;
  for (let from = 0; from < columnKg.length; from += columnsAFrame) {
    let sum = 0;
    for (const kg of columnKg.subarray(from, from + columnsAFrame)) sum += kg;
    heaviest = Math.max(heaviest, sum);
  }
  return heaviest;
}
