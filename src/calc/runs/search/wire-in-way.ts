import { measureRuns } from './measure-runs';
import type { RegularWay } from './regular-way';
import { sortRuns } from './sort-runs';
import { type Variant, WayLayout } from './way-layout';
import { WiringLater } from './wiring-later';
import type { ZoneToWire } from './zone-to-wire';
import type { WiringMeasures, WiringRuns, ZoneWiring } from './zone-wiring';

/**
 * A zone wired in one regular way: begun from the left and from the right, strands too long for a port cut in both styles,
 * rows folded one by one up to all together; each wiring that measures differently comes once. A hole or an odd edge cuts a
 * strand, so a run may come out short there and an entry out of reach.
 */
export function wireInWay(zone: ZoneToWire, way: RegularWay, layout = new WayLayout(zone)): ZoneWiring[] {
  const wirings: ZoneWiring[] = [];
  const add = (variant: Variant) => {
    const measures = measureRuns(zone.grid, zone.limits, layout.runsOf(variant.style), zone.lowestRow);
    if (wirings.some((each) => measuresAlike(each, measures))) return;
    wirings.push(new WiringLater(way, zone.tooLarge, measures, () => layOutVariant(zone, way, variant)));
  };
  for (const fromRight of zone.symmetric ? [false] : [false, true]) {
    for (const rowsTogether of rowsFolded(zone, way)) {
      const differ = layout.layOut(way, { fromRight, rowsTogether });
      add({ fromRight, rowsTogether, style: 'full' });
      if (differ) add({ fromRight, rowsTogether, style: 'even' });
    }
  }
  return wirings;
}

function layOutVariant(zone: ZoneToWire, way: RegularWay, variant: Variant): WiringRuns {
  const layout = new WayLayout(zone);
  layout.layOut(way, variant);
  return sortRuns(layout.runsOf(variant.style));
}

/** How many rows are folded together, where the way goes along rows. */
function rowsFolded({ grid, panelsAtMost }: ZoneToWire, way: RegularWay): Iterable<number> {
  if (way.kind !== 'rows') return [1];
  const most = Math.max(1, Math.floor(panelsAtMost / Math.max(1, grid.columns)));
  return new Set([1, Math.min(most, grid.rows), grid.rows]);
}

function measuresAlike(one: WiringMeasures, other: WiringMeasures): boolean {
  return (
    one.ports === other.ports &&
    one.entriesOutOfReach === other.entriesOutOfReach &&
    one.fullestPixels === other.fullestPixels &&
    one.figures === other.figures &&
    one.cableMm === other.cableMm
  );
}
