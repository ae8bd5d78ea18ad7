import type { SurfaceSet } from '../surfaces/surface-table';
import { portName } from './port-name';
import type { Run, RunsResults } from './run-result';
import type { WiredZone } from './wire-zones';
import { lowerEdgeMm } from './zone-grid';

type Assembled = Pick<RunsResults, 'runs' | 'order' | 'runOf' | 'placeOf'>;

/** Every zone's runs on their ports, panels numbered through all surfaces. Ports are taken in the order of the entries. */
export function assembleRuns(zones: readonly WiredZone[], surfaces: SurfaceSet): Assembled {
  const runs: Run[] = [];
  const wiredPanels = zones.reduce((sum, { wiring }) => sum + wiring.order.length, 0);
  const order = new Uint32Array(wiredPanels);
  const runOf = new Int32Array(surfaces.total).fill(-1);
  const placeOf = new Uint16Array(surfaces.total);
  let written = 0;
  zones.forEach(({ zone, surface, table, ports, limits, panels, wiring }, index) => {
    const offset = surfaces.offsets[surface]!;
    const portsABreakout = ports.breakoutsAProcessor > 0 ? ports.portsABreakout : null;
    for (let i = 0; i < wiring.ports; i++) {
      const from = wiring.start[i]!;
      const to = wiring.start[i + 1]!;
      const entryHeightMm = lowerEdgeMm(table, panels[wiring.order[from]!]!);
      runs.push({
        surfaceId: zone.surfaceId,
        zone: index,
        port: portName(zone.processor, i, portsABreakout),
        start: written,
        count: to - from,
        pixels: wiring.pixels[i]!,
        share: ports.capacityPixels > 0 ? wiring.pixels[i]! / ports.capacityPixels : 0,
        entryHeightMm,
        inReach: entryHeightMm <= limits.reachMm,
      });
      for (let at = from; at < to; at++) {
        const panel = offset + panels[wiring.order[at]!]!;
        order[written++] = panel;
        runOf[panel] = runs.length - 1;
        placeOf[panel] = at - from + 1;
      }
    }
  });
  return { runs, order, runOf, placeOf };
}
