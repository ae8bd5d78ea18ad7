/** Codes are below 2^53: 32 bits of the steps whichever way they turn, above 21 bits that tell left from right. */
const TURN_BITS = 21;
const TURNS = 2 ** TURN_BITS;

/** Walks runs from the entry on and keeps what the last one was. Steps are differences of places, `column * rows + row`. */
export class FigureWalk {
  /**
   * A number for the figure of the run: the steps that it takes, wherever it begins. The same steps have the same code; of two
   * other figures one pair in some 2^50 has.
   */
  code = 0;
  /** Steps to another column. */
  sideways = 0;

  walk(rows: number, order: Int32Array, from: number, to: number): void {
    let code = 0;
    let turns = 0;
    let sideways = 0;
    // Equal steps count as one piece with their length: eight panels further up.
    for (let at = from + 1; at < to; ) {
      const begun = at;
      const step = order[at]! - order[at - 1]!;
      do at++;
      while (at < to && order[at]! - order[at - 1]! === step);
      const length = at - begun;
      if (step === rows || step === -rows) {
        sideways += length;
        code = mix(code, length * 4);
        const turn = code >>> (32 - TURN_BITS);
        turns += step > 0 ? turn : -turn;
      } else code = mix(code, length * 4 + (step > 0 ? 1 : 2));
    }
    this.code = (code >>> 0) * TURNS + (turns & (TURNS - 1));
    this.sideways = sideways;
  }
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
