import { holdPorts } from '../names/hold-ports';
import type { LocatedChain } from '../names/locate-names';
import type { PortOutlets } from '../ports/outlets';
import type { SurfaceSet } from '../surfaces/surface-table';
import { placeReturns, type RunSlots } from './place-returns';
import { portName } from './port-name';
import type { Run, RunsResults } from './run-result';
import type { WiredZone } from './wire-zones';
import { lowerEdgeMm } from './zone-grid';

type Assembled = Pick<RunsResults, 'runs' | 'order' | 'runOf' | 'placeOf'> & {
  /** Breakouts in use on the processor of each zone, in the order of zones. */
  readonly breakoutsInUse: readonly number[];
};

/**
 * Every zone's runs on their ports, panels numbered through all surfaces. Ports are taken in the order of the entries; where
 * names are `held`, by those first.
 */
export function assembleRuns(
  zones: readonly WiredZone[],
  surfaces: SurfaceSet,
  held: readonly LocatedChain[] | null = null,
): Assembled {
  const runs: Run[] = [];
  const wiredPanels = zones.reduce((sum, { wiring }) => sum + wiring.order.length, 0);
  const order = new Uint32Array(wiredPanels);
  const runOf = new Int32Array(surfaces.total).fill(-1);
  const placeOf = new Uint16Array(surfaces.total);
  const natural = slotsOfZones(zones);
  const slots = held === null ? natural : holdPorts(zones, natural, held, surfaces);
  let written = 0;
  zones.forEach(({ zone, surface, table, ports, limits, panels, wiring }, index) => {
    const offset = surfaces.offsets[surface]!;
    for (let i = 0; i < wiring.ports; i++) {
      const from = wiring.start[i]!;
      const to = wiring.start[i + 1]!;
      const entryHeightMm = lowerEdgeMm(table, panels[wiring.order[from]!]!);
      const { out, back } = slots[index]![i]!;
      const returnProcessor = back === null ? null : zones[back.zone]!.zone.processor;
      runs.push({
        surfaceId: zone.surfaceId,
        zone: index,
        port: nameOf(zone.processor, out, ports),
        start: written,
        count: to - from,
        pixels: wiring.pixels[i]!,
        share: ports.capacityPixels > 0 ? wiring.pixels[i]! / ports.capacityPixels : 0,
        entryHeightMm,
        inReach: entryHeightMm <= limits.reachMm,
        returnPort: back === null ? null : nameOf(returnProcessor!, back.slot, ports),
        returnProcessor,
        exitHeightMm: lowerEdgeMm(table, panels[wiring.order[to - 1]!]!),
      });
      for (let at = from; at < to; at++) {
        const panel = offset + panels[wiring.order[at]!]!;
        order[written++] = panel;
        runOf[panel] = runs.length - 1;
        placeOf[panel] = at - from + 1;
      }
    }
  });
  return { runs, order, runOf, placeOf, breakoutsInUse: breakoutsInUse(zones, slots) };
}

function nameOf(processor: number, slot: number, { breakoutsAProcessor, portsABreakout }: PortOutlets): string {
  return portName(processor, slot, breakoutsAProcessor > 0 ? portsABreakout : null);
}

/** Slots of every zone's runs, the zones of a surface together: places of zones are those of the whole list. */
function slotsOfZones(zones: readonly WiredZone[]): readonly (readonly RunSlots[])[] {
  const slots: RunSlots[][] = [];
  for (let first = 0; first < zones.length; ) {
    const own = zones.slice(first).findIndex(({ surface }) => surface !== zones[first]!.surface);
    const end = own < 0 ? zones.length : first + own;
    const placed = placeReturns(
      zones.slice(first, end).map(({ wiring }) => wiring.ports),
      zones[first]!.ports,
    );
    for (const runs of placed) {
      slots.push(runs.map(({ out, back }) => ({ out, back: back && { ...back, zone: back.zone + first } })));
    }
    first = end;
  }
  return slots;
}

/** Breakouts with a run or a return on them; 0 on a processor with direct ports. */
function breakoutsInUse(zones: readonly WiredZone[], slots: readonly (readonly RunSlots[])[]): number[] {
  const boxes = zones.map(() => new Set<number>());
  const boxOf = (zone: number, slot: number) => Math.floor(slot / zones[zone]!.ports.portsABreakout);
  slots.forEach((runs, zone) => {
    for (const { out, back } of runs) {
      boxes[zone]!.add(boxOf(zone, out));
      if (back !== null) boxes[back.zone]!.add(boxOf(back.zone, back.slot));
    }
  });
  return zones.map(({ ports }, zone) =>
    ports.breakoutsAProcessor > 0 && ports.portsABreakout > 0 ? boxes[zone]!.size : 0,
  );
}
