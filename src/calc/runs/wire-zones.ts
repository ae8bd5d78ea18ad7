import type { Signal } from '../../plan/signal';
import { portsARun } from '../ports/outlets';
import type { PortsResults, SurfacePorts } from '../ports/port-result';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import type { Zone, ZonesResults } from '../zones/zone-result';
import { matchZones } from './match-zones';
import { runLimits } from './run-limits';
import type { ZoneWiring } from './search/zone-wiring';
import type { RunLimits } from './wiring-grid';
import { type ZoneGrid, zoneGrid } from './zone-grid';
import type { SolveZone, ZoneAnswer } from './zone-solver';

/** A zone with its wiring and all that it hangs on. */
export interface WiredZone extends ZoneGrid {
  readonly zone: Zone;
  /** Place of its surface in the set. */
  readonly surface: number;
  readonly table: SurfaceTable;
  readonly ports: SurfacePorts;
  readonly limits: RunLimits;
  /** What the search found. */
  readonly answer: ZoneAnswer;
  /** What was chosen of it for the surface's zones together. */
  readonly searched: ZoneWiring;
  /** What holds: what was searched, or what was made of it by hand. */
  readonly wiring: ZoneWiring;
  readonly byHand: boolean;
}

export interface WireInputs {
  readonly signal: Pick<Signal, 'reachMm' | 'priority' | 'ceilingEntry'>;
  readonly surfaces: SurfaceSet;
  readonly ports: PortsResults;
  readonly zones: ZonesResults;
  readonly solve: SolveZone;
}

/** Wires every zone of the stage as the search chooses, the zones of a surface together; in the order of zones. */
export function wireZones({ signal, surfaces, ports, zones, solve }: WireInputs): WiredZone[] {
  const indexOf = new Map(surfaces.surfaces.map(({ surfaceId }, i) => [surfaceId, i]));
  const solved = zones.zones.map((zone) => {
    const surface = indexOf.get(zone.surfaceId)!;
    const table = surfaces.surfaces[surface]!;
    const own = ports.surfaces[surface]!;
    const limits = runLimits(table.kind, own, signal);
    const { grid, panels } = zoneGrid(table, zone, signal.ceilingEntry);
    const answer = solve(grid, limits, {
      priority: signal.priority,
      portsThere: own.runsAProcessor,
      portsABreakout: own.portsABreakout / portsARun(own),
    });
    return { zone, surface, table, ports: own, limits, grid, panels, answer };
  });
  return surfaces.surfaces.flatMap((_, i) => {
    const own = solved.filter(({ surface }) => surface === i);
    const wirings = matchZones(own.map(({ answer }) => answer));
    return own.map((zone, at): WiredZone => {
      const searched = wirings[at]!;
      return { ...zone, searched, wiring: searched, byHand: false };
    });
  });
}
