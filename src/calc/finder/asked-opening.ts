import type { Wish } from '../../plan/wish';

/** The gap that a wish asks of a ring, and what it is taken from. */
export interface AskedOpening {
  readonly openingMm: number;
  /** closed: neither an opening nor the width of what must drive in is stated. */
  readonly from: 'wish' | 'vehicle' | 'closed';
}

/** The opening as wished; where nobody stated one, as wide as what must drive in, else none. */
export function askedOpening({ wall, vehicle }: Pick<Wish, 'wall' | 'vehicle'>): AskedOpening {
  if (wall.openingMm !== null) return { openingMm: wall.openingMm, from: 'wish' };
  if (vehicle.widthMm !== null) return { openingMm: vehicle.widthMm, from: 'vehicle' };
  return { openingMm: 0, from: 'closed' };
}
