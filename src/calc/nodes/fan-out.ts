/** Where something plugs in: a unit, from 0, and its outlet, from 1. */
export interface Outlet {
  readonly unit: number;
  readonly outlet: number;
}

/** A tree of units, each fed by an outlet of an earlier one, and the outlets that are left for devices. */
export interface FanOut {
  /** By unit, the outlet that feeds it; null for the first. */
  readonly feeds: readonly (Outlet | null)[];
  /** By device. */
  readonly devices: readonly Outlet[];
}

/**
 * The fewest units that give every device an outlet, with as few units in a row as can be: the first has `first` outlets, each of
 * the others `others` (at least 2). No device, no unit.
 */
export function fanOut(devices: number, first: number, others: number): FanOut {
  if (devices === 0) return { feeds: [], devices: [] };
  const units = 1 + Math.max(0, Math.ceil((devices - first) / (others - 1)));
  const feeds: (Outlet | null)[] = [null];
  const taken: Outlet[] = [];
  for (let unit = 0; unit < units; unit++) {
    const outlets = unit === 0 ? first : others;
    for (let outlet = 1; outlet <= outlets && taken.length < devices; outlet++) {
      if (feeds.length < units) feeds.push({ unit, outlet });
      else taken.push({ unit, outlet });
    }
  }
  return { feeds, devices: taken };
}
