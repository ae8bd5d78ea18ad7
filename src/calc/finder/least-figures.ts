import { applyCommand } from '../../plan/commands';
import type { Plan } from '../../plan/plan';
import { layOutCeilings } from '../ceilings/lay-out-ceilings';
import { computePicture } from '../picture/compute-picture';
import type { SurfacePicture } from '../picture/picture-result';
import { computePorts } from '../ports/compute-ports';
import { portsARun } from '../ports/outlets';
import type { SurfacePorts } from '../ports/port-result';
import { addBranches, branchAmps, noBranch } from '../power/branch-current';
import { legScheme, legToLegFactor } from '../power/leg-scheme';
import { surfaceCurrents } from '../power/surface-currents';
import { joinSurfaces } from '../surfaces/join-surfaces';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import { layOutWalls } from '../walls/lay-out-walls';
import { whyNoZone } from '../zones/why-no-zone';
import type { Build, LeastFigures } from './build';

/**
 * What the stage needs at the least with a build in it: proved bounds, from panels and ports alone, before a zone is cut, a run
 * laid or a circuit put on a leg. Null where the plan cannot take the build.
 */
export function leastFigures(plan: Plan, build: Build): LeastFigures | null {
  const outcome = applyCommand(plan, build.command);
  if ('refused' in outcome) return null;
  const { plan: built } = outcome;
  const { panels, processors, breakouts } = built.catalogue;
  const walls = layOutWalls(built.walls, panels);
  const surfaces = joinSurfaces(walls, layOutCeilings(built.ceilings, panels, walls));
  const picture = computePicture({ picture: built.picture, surfaces });
  const ports = computePorts({ signal: built.signal, processors, breakouts, panels, surfaces, picture });
  const bounds = surfaces.surfaces.map((table, i) =>
    surfaceBounds(built, table, ports.surfaces[i]!, picture.surfaces[i]!),
  );
  return {
    processors: bounds.reduce((sum, bound) => sum + bound.processors, 0),
    ports: bounds.reduce((sum, bound) => sum + bound.ports, 0),
    worstLegA: leastWorstLegA(built, surfaces),
  };
}

/**
 * Ports by panels and by pixels; processors by pixels, by ports and by columns side by side. A surface that nothing can drive
 * counts nothing, and so does one whose zones up are given: these may be more than can be cut.
 */
function surfaceBounds(
  { signal, feed }: Plan,
  table: SurfaceTable,
  ports: SurfacePorts,
  { served, pixels }: SurfacePicture,
): Pick<LeastFigures, 'ports' | 'processors'> {
  const own = signal.bySurface.find(({ surfaceId }) => surfaceId === table.surfaceId);
  const given = (own?.zonesUp ?? null) !== null;
  if (table.count === 0 || given || whyNoZone(table, ports, signal, served, feed) !== null)
    return { ports: 0, processors: 0 };
  const panelsAPort = ports.byType.length === 1 ? ports.byType[0]!.panelsAPort : ports.panelsMost;
  const leastPorts = Math.max(Math.ceil(table.count / panelsAPort), Math.ceil(pixels / ports.usablePixels));
  const narrowest = table.types.reduce(
    (least, { pixelsWide }) => Math.min(least, pixelsWide),
    Number.POSITIVE_INFINITY,
  );
  const columnsAZone = Math.min(
    Math.floor(ports.processor!.canvas.widest / narrowest),
    own?.zoneColumnsMost ?? table.columns,
  );
  return {
    ports: leastPorts * portsARun(ports),
    processors: Math.max(
      Math.ceil(pixels / ports.processorPixels),
      Math.ceil(leastPorts / ports.runsAProcessor),
      Math.ceil(columnsWithPanels(table) / columnsAZone),
    ),
  };
}

function columnsWithPanels({ at, columns, rows }: SurfaceTable): number {
  let count = 0;
  for (let c = 0; c < columns; c++) {
    if (at.subarray(c * rows, (c + 1) * rows).some((panel) => panel >= 0)) count++;
  }
  return count;
}

/**
 * The legs carry the complex power of all panels; were it spread evenly, each would carry so many amperes, and the worst is no
 * less: |sum of V I*| <= V sum of |I| <= legs x V x worst. Signal equipment is left out, as are panels too large for a circuit.
 */
function leastWorstLegA({ power, catalogue }: Plan, surfaces: SurfaceSet): number {
  const currents = surfaceCurrents({ power, panels: catalogue.panels, surfaces });
  let stage = noBranch;
  surfaces.surfaces.forEach((surface, s) => {
    for (let i = 0; i < surface.count; i++) {
      const drawn = currents[s]![surface.type[i]!]!;
      if (drawn.panels > 0) stage = addBranches(stage, drawn.branch);
    }
  });
  const factor = power.connection === 'leg-to-leg' ? legToLegFactor(power.supply.kind) : 1;
  return (factor * branchAmps(stage)) / legScheme(power).legs.length;
}
