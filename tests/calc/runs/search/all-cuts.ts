import { endsOutOfReach } from '../../../../src/calc/runs/search/ends-out-of-reach';
import type { Region } from '../../../../src/calc/runs/search/region';

/** One way of cutting a strand: where its runs end, and what that comes to. */
export interface CutStrand {
  readonly ends: readonly number[];
  readonly loads: readonly number[];
  readonly high: number;
  readonly squares: number;
}

/** Every way of cutting a strand of at most a dozen cells into runs that fit, by trying all sets of cuts. */
export function allCuts(region: Region, strand: readonly number[]): CutStrand[] {
  const found: CutStrand[] = [];
  for (let mask = 0; mask < 1 << (strand.length - 1); mask++) {
    const ends = strand.flatMap((_, i) => (i === strand.length - 1 || (mask & (1 << i)) !== 0 ? [i + 1] : []));
    const runs = ends.map((end, i) => strand.slice(ends[i - 1] ?? 0, end));
    const loads = runs.map((run) => loadOf(region, run));
    const { usablePixels, panelsMost, lastObeysReach } = region.limits;
    if (loads.some((load) => load > usablePixels) || runs.some(({ length }) => length > panelsMost)) continue;
    const high = runs.map((run) => endsOutOfReach(region.outOfReach, run[0]!, run.at(-1)!, lastObeysReach === true));
    found.push({
      ends,
      loads,
      high: high.reduce((sum, each) => sum + each, 0),
      squares: loads.reduce((sum, load) => sum + load ** 2, 0),
    });
  }
  return found;
}

function loadOf({ limits, pixels, left, right, top, bottom }: Region, run: readonly number[]): number {
  if (limits.counting === 'panels') return run.reduce((sum, cell) => sum + pixels[cell]!, 0);
  const most = (edges: Float64Array) => Math.max(...run.map((cell) => edges[cell]!));
  const least = (edges: Float64Array) => Math.min(...run.map((cell) => edges[cell]!));
  return (most(right) - least(left)) * (most(bottom) - least(top));
}
