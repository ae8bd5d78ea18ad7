import type { Signal } from '../../plan/signal';
import type { TimingChoice } from '../links/time-canvas';
import type { PictureResults, SurfacePicture } from '../picture/picture-result';
import { breakoutsForRuns, portsARun } from '../ports/outlets';
import type { PortsResults, SurfacePorts } from '../ports/port-result';
import type { SolveZone } from '../runs/zone-solver';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import { cutSurface, type SurfaceCut } from './cut-surface';
import { inputPayload } from './input-payload';
import { whyNoZone } from './why-no-zone';
import type { SurfaceZones, Zone, ZonesResults } from './zone-result';

export interface ZonesInputs extends TimingChoice {
  readonly signal: Signal;
  readonly surfaces: SurfaceSet;
  readonly picture: PictureResults;
  readonly ports: PortsResults;
  readonly solve: SolveZone;
}

/**
 * Cuts every surface into zones of equal canvas, one processor each. Processors are numbered through the stage in the order
 * of surfaces, on each the lowest zones first, from column 1 up. Hand changes of the wiring move no zone.
 */
export function computeZones(inputs: ZonesInputs): ZonesResults {
  const zones: Zone[] = [];
  const surfaces = inputs.surfaces.surfaces.map((table, i) => {
    const ports = inputs.ports.surfaces[i]!;
    const picture = inputs.picture.surfaces[i]!;
    const stopped = whyNoZone(table, ports, inputs.signal, picture.served, inputs);
    const cut = stopped === null && table.count > 0 ? cutOf(inputs, table, ports, picture) : null;
    if (cut !== null) zones.push(...numbered(table, ports, cut, zones.length));
    return summary(inputs, table, picture, ports, cut, stopped);
  });
  return { zones, surfaces, processors: zones.length };
}

function cutOf(
  inputs: ZonesInputs,
  table: SurfaceTable,
  ports: SurfacePorts,
  { served }: SurfacePicture,
): SurfaceCut | null {
  const { signal, solve } = inputs;
  const own = signal.bySurface.find(({ surfaceId }) => surfaceId === table.surfaceId) ?? null;
  return cutSurface({ table, signal, own, processor: ports.processor!, ports, served, choice: inputs, solve });
}

function numbered(table: SurfaceTable, ports: SurfacePorts, { cut, zones }: SurfaceCut, before: number): Zone[] {
  return zones.map((zone, i) => ({
    surfaceId: table.surfaceId,
    letter: table.letter,
    processor: before + i + 1,
    processorId: ports.processor!.id,
    firstColumn: zone.firstColumn,
    columns: zone.columns,
    firstRow: zone.firstRow,
    rows: zone.rows,
    panels: zone.panels,
    canvasWidth: cut.canvas.width,
    canvasHeight: cut.canvas.height,
    blankColumns: cut.columns - zone.columns,
    breakouts: breakoutsForRuns(zone.runs, ports),
    ports: zone.runs * portsARun(ports),
  }));
}

function summary(
  choice: TimingChoice,
  table: SurfaceTable,
  picture: SurfacePicture,
  ports: SurfacePorts,
  found: SurfaceCut | null,
  stopped: string | null,
): SurfaceZones {
  if (found === null) {
    return {
      surfaceId: table.surfaceId,
      zones: 0,
      canvasWidth: 0,
      canvasHeight: 0,
      inputBps: null,
      widths: [],
      stoppedBy:
        stopped ?? (table.count === 0 ? null : 'One column is more than the processor drives with so many zones up.'),
    };
  }
  const { cut, zones, widths, portsSuffice } = found;
  return {
    surfaceId: table.surfaceId,
    zones: zones.length,
    canvasWidth: cut.canvas.width,
    canvasHeight: cut.canvas.height,
    inputBps: inputPayload(cut.canvas, picture.served, choice),
    widths: widths.map((width) => ({
      surfaceId: table.surfaceId,
      columns: width.columns,
      up: width.up,
      processors: width.processors,
      canvasWidth: width.canvas.width,
      canvasHeight: width.canvas.height,
      usedShare: (width.canvas.width * width.canvas.height) / ports.processorPixels,
      blankColumns: width.blankColumns,
      portsAZone: portsARun(ports) * (width === cut ? Math.max(...zones.map((zone) => zone.runs)) : width.portsAtLeast),
      portsExact: width === cut,
      chosen: width === cut,
    })),
    stoppedBy: portsSuffice ? null : 'The narrowest zone needs more ports than a processor has.',
  };
}
