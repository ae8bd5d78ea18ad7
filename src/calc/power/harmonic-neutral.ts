/** One harmonic of a leg's current: order 1 is mains frequency; amperes root mean square. */
export interface Harmonic {
  readonly order: number;
  readonly currentA: number;
}

/** Most that the neutral of rectifier loads carries, in shares of the leg current: pulses of three legs that never overlap. */
export const neutralBound = Math.sqrt(3);

/**
 * Neutral and leg current (root mean square) of three equal legs whose current holds harmonics: those of order 3, 9, 15.. are in
 * step on all legs and add up on the neutral, the others cancel. Source: Masters, Renewable and Efficient Electric Power Systems,
 * eq. 2.102.
 */
export function harmonicNeutral(spectrum: readonly Harmonic[]): { readonly legA: number; readonly neutralA: number } {
  const squares = (list: readonly Harmonic[]) => list.reduce((sum, h) => sum + h.currentA ** 2, 0);
  const triplen = spectrum.filter((h) => h.order % 3 === 0);
  return { legA: Math.sqrt(squares(spectrum)), neutralA: 3 * Math.sqrt(squares(triplen)) };
}
