import type { SpaceNeeded } from './space-needed';

/** How space sits in a hall, turned whichever way round leaves most. */
export interface HallFit {
  /** Least of the two margins; negative where it does not fit. */
  readonly spareMm: number;
  /** The side with that margin: what is needed along it and how long the hall is there. */
  readonly neededMm: number;
  readonly hallMm: number;
  readonly fits: boolean;
  /** True where what is needed across lies along the hall's width. */
  readonly turned: boolean;
}

/** Lays the needed space along the hall either way round. Sides that agree within a micrometre fit. */
export function hallFit({ acrossMm, alongMm }: SpaceNeeded, hallLengthMm: number, hallWidthMm: number): HallFit {
  const laid = (first: number, second: number, turned: boolean): HallFit => {
    const [spareMm, neededMm, hallMm] =
      hallLengthMm - first <= hallWidthMm - second
        ? [hallLengthMm - first, first, hallLengthMm]
        : [hallWidthMm - second, second, hallWidthMm];
    return { spareMm, neededMm, hallMm, fits: spareMm >= -0.001, turned };
  };
  const straight = laid(acrossMm, alongMm, false);
  const turned = laid(alongMm, acrossMm, true);
  return turned.spareMm > straight.spareMm ? turned : straight;
}
