/** A support frame of a standing wall: the columns that it carries, from 0, and what they weigh. */
export interface Frame {
  readonly fromColumn: number;
  readonly massKg: number;
}

/** The heaviest support frame: one carries so many neighbouring columns, counted from the left. */
export function heaviestFrame(columnKg: Float64Array, columnsAFrame: number): Frame {
  let heaviest: Frame = { fromColumn: 0, massKg: 0 };
  for (let from = 0; from < columnKg.length; from += columnsAFrame) {
    let sum = 0;
    for (const kg of columnKg.subarray(from, from + columnsAFrame)) sum += kg;
    if (sum > heaviest.massKg) heaviest = { fromColumn: from, massKg: sum };
  }
  return heaviest;
}
