import type { Priority } from '../../plan/signal';
import { regularWirings } from './search/regular-wirings';
import type { ZoneWiring } from './search/zone-wiring';
import type { RunLimits, WiringGrid } from './wiring-grid';
import { createZoneSolver, type SolveZone, type WiringTerms, type ZoneAnswer } from './zone-solver';

type Merit = (wiring: ZoneWiring, breakouts: number) => readonly number[];

const fullest = ({ fullestShare }: ZoneWiring) => fullestShare ?? Number.MAX_VALUE;

/** What counts once a wiring fits, first things first. */
const merits: Readonly<Record<Priority, Merit>> = {
  repeats: (wiring, breakouts) => [breakouts, wiring.figures, fullest(wiring), wiring.cableMm],
  'fewest-ports': (wiring, breakouts) => [wiring.ports, breakouts, wiring.figures, fullest(wiring), wiring.cableMm],
  'most-free': (wiring, breakouts) => [fullest(wiring), breakouts, wiring.figures, wiring.cableMm],
  'shortest-cable': (wiring, breakouts) => [wiring.cableMm, breakouts, wiring.figures, fullest(wiring)],
};

/** Entries in reach and ports there come before all else; of wirings alike in everything the first found holds. */
function byMerit(terms: WiringTerms): (a: ZoneWiring, b: ZoneWiring) => number {
  const meritOf = (wiring: ZoneWiring) => [
    wiring.entriesOutOfReach,
    Math.max(0, wiring.ports - terms.portsThere),
    ...merits[terms.priority](wiring, Math.ceil(wiring.ports / Math.max(1, terms.portsABreakout))),
  ];
  return (a, b) => {
    const others = meritOf(b);
    return (
      meritOf(a)
        .map((figure, i) => figure - others[i]!)
        .find((difference) => difference !== 0) ?? 0
    );
  };
}

/** No wiring takes fewer: all pixels over what a port takes, and all panels over what a run may hold. */
function leastPorts(grid: WiringGrid, limits: RunLimits): number {
  let pixels = 0;
  let panels = 0;
  for (const [place, isThere] of grid.present.entries()) {
    panels += isThere;
    if (isThere) pixels += grid.pixelWidth[place]! * grid.pixelHeight[place]!;
  }
  if (panels === 0) return 0;
  const byPixels = limits.usablePixels > 0 ? Math.ceil(pixels / limits.usablePixels) : panels;
  return Math.max(1, Math.min(panels, byPixels), Math.ceil(panels / Math.max(1, limits.panelsMost)));
}

/** The best of the regular ways of wiring a zone, by the user's priority, beside a bound that no wiring beats. */
export function chooseRegular(grid: WiringGrid, limits: RunLimits, terms: WiringTerms): ZoneAnswer {
  const ways = regularWirings(grid, limits);
  const compare = byMerit(terms);
  const chosen = ways.reduce((best, wiring) => (compare(wiring, best) < 0 ? wiring : best));
  return { chosen, ways, least: leastPorts(grid, limits) };
}

/** Zones whose key is the same are wired alike. */
function keyOf(grid: WiringGrid, limits: RunLimits): string {
  const { columns, rows, present, pixelLeft, pixelTop, pixelWidth, pixelHeight, entryHeightMm } = grid;
  const { usablePixels, panelsMost, counting, reachMm, lastObeysReach } = limits;
  const parts = [present, pixelLeft, pixelTop, pixelWidth, pixelHeight, entryHeightMm].map((list) => list.join());
  return [
    columns,
    rows,
    grid.columnPitchMm,
    grid.rowPitchMm,
    usablePixels,
    panelsMost,
    counting,
    reachMm,
    lastObeysReach,
    ...parts,
  ].join('|');
}

/** A solver of zones with a memory of its own. */
export function solveZones(): SolveZone {
  return createZoneSolver(chooseRegular, keyOf);
}
