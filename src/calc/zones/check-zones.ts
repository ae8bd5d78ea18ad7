import type { Check, Fix, Place } from '../chapter';
import type { SurfacePorts } from '../ports/port-result';
import { setFieldsFix } from '../set-fields-fix';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import { computeZones, type ZonesInputs } from './compute-zones';
import type { SurfaceZones, ZonesResults } from './zone-result';

/** Whether every surface is cut into zones that a processor drives and whose canvas its input carries. */
export function checkZones(inputs: ZonesInputs, results: ZonesResults): Check[] {
  return results.surfaces.flatMap((zones, i) => {
    const table = inputs.surfaces.surfaces[i]!;
    const ports = inputs.ports.surfaces[i]!;
    if (table.count === 0) return [];
    return [checkFit(inputs, table, ports, zones, i), ...checkInput(table, ports, zones)];
  });
}

const placeOf = (table: SurfaceTable): Place => ({ kind: 'surface', name: table.letter });

function checkFit(
  inputs: ZonesInputs,
  table: SurfaceTable,
  ports: SurfacePorts,
  zones: SurfaceZones,
  index: number,
): Check {
  const chosen = zones.widths.find((width) => width.chosen);
  const base = {
    id: `zones.fit.${table.letter}`,
    chapter: 'zones' as const,
    measured: chosen === undefined ? null : chosen.canvasWidth * chosen.canvasHeight,
    limit: ports.processor === null ? null : ports.processorPixels,
    unit: 'px' as const,
    where: [placeOf(table)],
  };
  if (zones.stoppedBy !== null) {
    const fix = letZonesUpFit(inputs, table, index);
    return {
      ...base,
      severity: 'stop',
      sentence: `No zone of ${surfaceWords(table)} fits. ${zones.stoppedBy}`,
      ...(fix === null ? {} : { fix }),
    };
  }
  return {
    ...base,
    severity: 'pass',
    sentence: `Zones of ${surfaceWords(table)}: {zones}, each with the same canvas of {wide} by {high} pixels, {measured} of the {limit} that a processor drives there.`,
    values: {
      zones: { value: zones.zones, unit: 'count' },
      wide: { value: zones.canvasWidth, unit: 'count' },
      high: { value: zones.canvasHeight, unit: 'count' },
    },
  };
}

/** Where the user's number of zones up is what hinders: as few as fit instead, if any do. */
function letZonesUpFit(inputs: ZonesInputs, table: SurfaceTable, index: number): Fix | null {
  const { signal } = inputs;
  const own = signal.bySurface.findIndex(({ surfaceId }) => surfaceId === table.surfaceId);
  if (own < 0 || signal.bySurface[own]!.zonesUp === null) return null;
  const bySurface = signal.bySurface.map((choice, i) => (i === own ? { ...choice, zonesUp: null } : choice));
  const freed = computeZones({ ...inputs, signal: { ...signal, bySurface } });
  if (freed.surfaces[index]!.stoppedBy !== null) return null;
  return setFieldsFix('As few zones up as fit', 'zones up', [
    { path: ['signal', 'bySurface', own, 'zonesUp'], value: null },
  ]);
}

function checkInput(table: SurfaceTable, ports: SurfacePorts, zones: SurfaceZones): Check[] {
  if (ports.processor === null || zones.zones === 0) return [];
  const { inputGbps } = ports.processor.canvas;
  return [
    {
      id: `zones.input.${table.letter}`,
      chapter: 'zones',
      // A canvas that the input does not carry is no zone in the first place.
      severity: inputGbps === null ? 'offer' : zones.inputBps === null ? 'watch' : 'pass',
      measured: zones.inputBps,
      limit: inputGbps === null ? null : inputGbps * 1e9,
      unit: 'bps',
      where: [placeOf(table)],
      sentence:
        zones.inputBps === null
          ? `A canvas of ${surfaceWords(table)} has no timing of the kind chosen, so what an input must carry cannot be computed.`
          : inputGbps === null
            ? `Not stated: what the input of the processor carries. A canvas of ${surfaceWords(table)} needs {measured}.`
            : `A canvas of ${surfaceWords(table)} needs {measured} of the {limit} that the input of its processor carries.`,
    },
  ];
}
