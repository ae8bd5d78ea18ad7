import { runPixels } from '../search/run-pixels';
import { areNeighbours } from './are-neighbours';
import type { Changed, ZoneRunsDraft } from './zone-runs';

/**
 * Lets a run go from one panel to its neighbour on another run. A run is turned round where that saves a cut; what lies
 * beyond the two panels stays behind as a run of its own. Rests where the joined run is more than a port takes.
 */
export function applyJoin({ grid, limits, runs }: ZoneRunsDraft, from: number, to: number): Changed {
  if (!areNeighbours(grid, from, to)) return { reason: 'the two panels do not share an edge' };
  const first = runs.find((run) => run.includes(from));
  const second = runs.find((run) => run.includes(to));
  if (first === undefined || second === undefined) return { reason: 'one of the two panels is on no run' };
  if (first === second) {
    const apart = Math.abs(first.indexOf(from) - first.indexOf(to));
    return apart === 1 ? { runs } : { reason: 'the two panels are on one run already, further on' };
  }
  const before = splitAfter(first, from);
  const after = splitBefore(second, to);
  const joined = [...before.kept, ...after.kept];
  const pixels = runPixels(grid, limits, Int32Array.from(joined), 0, joined.length);
  if (pixels > limits.usablePixels || joined.length > limits.panelsMost) {
    return { reason: 'the joined run would be more than a port takes' };
  }
  const others = runs.filter((run) => run !== first && run !== second);
  return { runs: [...others, joined, before.left, after.left].filter((run) => run.length > 0) };
}

interface Split {
  readonly kept: readonly number[];
  readonly left: readonly number[];
}

function splitAfter(run: readonly number[], place: number): Split {
  const turned = run[0] === place ? [...run].reverse() : run;
  const end = turned.indexOf(place) + 1;
  return { kept: turned.slice(0, end), left: turned.slice(end) };
}

function splitBefore(run: readonly number[], place: number): Split {
  const turned = run.at(-1) === place ? [...run].reverse() : run;
  const start = turned.indexOf(place);
  return { kept: turned.slice(start), left: turned.slice(0, start) };
}
