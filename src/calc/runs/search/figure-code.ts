/** Codes are below 2^53: 32 bits of the steps whichever way they turn, above 21 bits that tell left from right. */
const TURN_BITS = 21;
const TURNS = 2 ** TURN_BITS;

/**
 * A number for the figure of one run: the steps that it takes from the entry on, wherever it begins. The same steps have the
 * same code; of two other figures one pair in some 2^50 has. Steps are differences of places, `column * rows + row`.
 */
export function figureCode(rows: number, order: Int32Array, from: number, to: number): number {
  let code = 0;
  let turns = 0;
  // Equal steps count as one piece with their length: eight panels further up.
  for (let at = from + 1; at < to; ) {
    const step = order[at]! - order[at - 1]!;
    const begun = at;
    do at++;
    while (at < to && order[at]! - order[at - 1]! === step);
    const sideways = step === rows || step === -rows;
    code = mix(code, (at - begun) * 4 + (sideways ? 0 : step > 0 ? 1 : 2));
    if (sideways) turns += step === rows ? code >>> (32 - TURN_BITS) : -(code >>> (32 - TURN_BITS));
  }
  return (code >>> 0) * TURNS + (turns & (TURNS - 1));
}

/** The code of a figure's mirror image. */
export function mirrorFigure(code: number): number {
  const turns = code % TURNS;
  return code - turns + (turns === 0 ? 0 : TURNS - turns);
}

function mix(code: number, piece: number): number {
  let mixed = Math.imul(code ^ piece, 0x9e3779b1);
  mixed ^= mixed >>> 15;
  mixed = Math.imul(mixed, 0x85ebca6b);
  return mixed ^ (mixed >>> 13) ^ piece;
}
