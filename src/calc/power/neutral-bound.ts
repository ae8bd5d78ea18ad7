/**
 * Most that the neutral of rectifier loads carries, in shares of the leg current (root mean square): pulses of three legs that
 * never overlap. Harmonics of order 3, 9, 15.. are in step on all legs and add up there. Source: Masters, Renewable and
 * Efficient Electric Power Systems, eq. 2.102; the bound itself by the squares of three pulses in turn.
 */
export const neutralBound = Math.sqrt(3);
