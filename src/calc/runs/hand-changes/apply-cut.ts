import type { Changed, ZoneRunsDraft } from './zone-runs';

/** Cuts a run between two panels that follow each other on it, in either direction; the second half gets a port of its own. */
export function applyCut({ runs }: ZoneRunsDraft, from: number, to: number): Changed {
  const index = runs.findIndex((run) => run.includes(from));
  const run = runs[index];
  const at = run?.indexOf(from) ?? -1;
  if (run === undefined || (run[at + 1] !== to && run[at - 1] !== to)) {
    return { reason: 'the two panels do not follow each other on a run' };
  }
  const cut = run[at + 1] === to ? at + 1 : at;
  return { runs: [...runs.slice(0, index), run.slice(0, cut), run.slice(cut), ...runs.slice(index + 1)] };
}
