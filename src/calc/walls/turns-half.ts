/** Half a turn, less what sums of joints may lose by rounding. */
const HALF_TURN_DEG = 180 - 1e-9;

/** A wall that turns half a turn or more closes round a middle: it has an opening, and stands about its best-fit centre. */
export const turnsHalf = (turnsDeg: number): boolean => Math.abs(turnsDeg) >= HALF_TURN_DEG;
