import type { RunLimits, WiringGrid } from '../../../../src/calc/runs/wiring-grid';
import { holdings } from './least-by-program';

/** Fewest entries above reach, then fewest runs, by trying every way of covering a zone of at most a dozen panels with chains. */
export function leastByTrying(grid: WiringGrid, limits: RunLimits): { high: number; ports: number } {
  const sets = holdings(grid, limits).map(({ places, high }) => ({
    mask: places.reduce((mask, place) => mask | (1 << place), 0),
    high,
  }));
  const best = new Map<number, { high: number; ports: number }>([[0, { high: 0, ports: 0 }]]);
  const cover = (left: number): { high: number; ports: number } => {
    const known = best.get(left);
    if (known !== undefined) return known;
    const first = left & -left;
    let least = { high: Number.POSITIVE_INFINITY, ports: Number.POSITIVE_INFINITY };
    for (const { mask, high } of sets) {
      if ((mask & first) === 0 || (mask & ~left) !== 0) continue;
      const rest = cover(left & ~mask);
      const all = { high: rest.high + high, ports: rest.ports + 1 };
      if ((all.high - least.high || all.ports - least.ports) < 0) least = all;
    }
    best.set(left, least);
    return least;
  };
  return cover(Array.from(grid.present).reduce((mask, there, place) => (there === 1 ? mask | (1 << place) : mask), 0));
}
