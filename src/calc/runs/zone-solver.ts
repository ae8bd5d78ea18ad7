import type { Priority } from '../../plan/signal';
import type { ZoneWiring } from './search/zone-wiring';
import type { RunLimits, WiringGrid } from './wiring-grid';

/** What a zone's wiring is chosen by, besides its shape and what a run may hold. */
export interface WiringTerms {
  readonly priority: Priority;
  /** Ports of the zone's processor, and of one breakout. */
  readonly portsThere: number;
  readonly portsABreakout: number;
}

/** How one zone is wired: the way chosen, the ways it was chosen from, and the least ports possible. */
export interface ZoneAnswer {
  readonly chosen: ZoneWiring;
  readonly ways: readonly ZoneWiring[];
  /** Wirings that fit as well, put the user's priority as well and need as little hardware, the chosen one first: see `matchZones`. */
  readonly peers: readonly ZoneWiring[];
  readonly least: number;
}

export type SolveZone = (grid: WiringGrid, limits: RunLimits, terms: WiringTerms) => ZoneAnswer;

/** Zones of different shape that a solver remembers: all of the largest plan's, and those of the edits before. */
const remembered = 4096;

/**
 * A solver that wires each distinct zone shape once: equal shapes, limits and terms get the answer of before. The search is
 * bounded in steps, so that every solver gives the same answer.
 */
export function createZoneSolver(choose: SolveZone, keyOf: (grid: WiringGrid, limits: RunLimits) => string): SolveZone {
  const answers = new Map<string, ZoneAnswer>();
  return (grid, limits, terms) => {
    const key = `${keyOf(grid, limits)}|${terms.priority}|${terms.portsThere}|${terms.portsABreakout}`;
    const known = answers.get(key);
    if (known !== undefined) {
      // Young again: a Map keeps the order of insertion.
      answers.delete(key);
      answers.set(key, known);
      return known;
    }
    const answer = choose(grid, limits, terms);
    answers.set(key, answer);
    if (answers.size > remembered) answers.delete(answers.keys().next().value!);
    return answer;
  };
}
