import type { NodesResults } from '../nodes/node-result';
import type { SurfaceSet } from '../surfaces/surface-table';
import { zoneOfPanels } from '../zones/zone-of-panels';
import type { Zone } from '../zones/zone-result';

/** Where every panel of the stage finds its pixels, by its number through all surfaces. */
export interface PixelMap {
  /** Index in the zones' list of the zone that drives it; -1 where none does. */
  readonly zoneOf: Int32Array;
  /** Index of the node that feeds it; -1 where none does. */
  readonly nodeOf: Int32Array;
  /** Its top left pixel on that node's canvas, y down from the top row as seen from inside; 0 where no node feeds it. */
  readonly x: Uint32Array;
  readonly y: Uint32Array;
}

/** One pass over the zones and one over the panels; where two zones share a panel, which is a fault, the later one has it. */
export function mapPixels(
  { surfaces, offsets, total }: SurfaceSet,
  zones: readonly Zone[],
  { nodes, nodeOfZone }: Pick<NodesResults, 'nodes' | 'nodeOfZone'>,
): PixelMap {
  const zoneOf = new Int32Array(total);
  const nodeOf = new Int32Array(total).fill(-1);
  const x = new Uint32Array(total);
  const y = new Uint32Array(total);
  surfaces.forEach((table, s) => {
    const offset = offsets[s]!;
    zoneOf.set(zoneOfPanels(table, zones), offset);
    for (let local = 0; local < table.count; local++) {
      const panel = offset + local;
      const node = nodes[nodeOfZone[zoneOf[panel]!] ?? -1];
      if (node === undefined) continue;
      nodeOf[panel] = nodeOfZone[zoneOf[panel]!]!;
      x[panel] = table.canvasX[local]! - node.offsetX;
      y[panel] = table.canvasY[local]! - node.offsetY;
    }
  });
  return { zoneOf, nodeOf, x, y };
}
