import { pathFrom } from './path-from';
import type { Changed, ZoneRunsDraft } from './zone-runs';

/** Lets the run that holds a panel begin there: turned round where it ends there, else led anew through the same panels. */
export function applyEntry({ grid, runs }: ZoneRunsDraft, place: number): Changed {
  const index = runs.findIndex((run) => run.includes(place));
  const run = runs[index];
  if (run === undefined) return { reason: 'its panel is on no run' };
  if (run[0] === place) return { runs };
  const led = run.at(-1) === place ? [...run].reverse() : pathFrom(grid, run, place);
  if (led === null) return { reason: 'no way through the panels of its run begins at this panel' };
  return { runs: runs.map((other, i) => (i === index ? led : other)) };
}
