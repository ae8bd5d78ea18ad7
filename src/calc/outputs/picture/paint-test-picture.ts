import { panelName } from '../../surfaces/panel-at';
import type { SurfaceTable } from '../../surfaces/surface-table';
import { newRaster, type Raster } from '../raster';
import { paintBorder, paintZoneEdge } from './paint-borders';
import { paintGround, rampRows } from './paint-ground';
import { paintRun } from './paint-run';
import { paintWords } from './paint-words';
import { picturePalette } from './picture-inks';
import { pictureSpot, type TestPictureInputs } from './test-picture-inputs';

/** Lines of the cross-hatch that cross the shorter side of a panel. */
const hatchesAPanel = 3;
const leastPitch = 8;

/**
 * Test picture of one node at the exact size of its canvas: of every panel its name, port, place on the run and border, the
 * run's line with arrows, the zone's edge, cross-hatch and ramps. Pixels without a panel stay black.
 * Throws where there is no such node.
 */
export function paintTestPicture(inputs: TestPictureInputs, node: number): Raster {
  const { surfaces, zones, runs, map } = inputs;
  const canvas = inputs.nodes[node];
  if (canvas === undefined) throw new Error(`there is no node ${node}`);
  const raster = newRaster(canvas.canvasWidth, canvas.canvasHeight, picturePalette());
  const s = surfaces.surfaces.findIndex((one) => one.surfaceId === canvas.surfaceId);
  const table = surfaces.surfaces[s];
  if (table === undefined) return raster;
  const offset = surfaces.offsets[s]!;
  const ramps = rampRows(raster.width);
  const pitch = hatchPitch(table);
  const spots = panelsOfNode(inputs, node, offset, table.count).map((panel) => pictureSpot(inputs, panel));
  const shown = new Set<number>();
  for (const spot of spots) {
    const local = spot.panel - offset;
    const run = runs.runOf[spot.panel]!;
    paintGround(raster, spot, { x: table.canvasX[local]!, y: table.canvasY[local]! }, run, pitch, ramps);
    if (run >= 0) shown.add(run);
  }
  for (const spot of spots) {
    const zone = zones[map.zoneOf[spot.panel]!]!;
    const local = spot.panel - offset;
    paintZoneEdge(raster, spot, zone, table.column[local]!, table.row[local]!);
  }
  for (const run of shown) paintRun(raster, inputs, runs.runs[run]!);
  for (const spot of spots) {
    const local = spot.panel - offset;
    const run = runs.runOf[spot.panel]!;
    const words = {
      name: panelName(surfaces, table, table.column[local]!, table.row[local]!),
      port: runs.runs[run]?.port ?? null,
      place: runs.placeOf[spot.panel]!,
    };
    paintWords(raster, spot, words, run);
    paintBorder(raster, spot);
  }
  return raster;
}

function panelsOfNode({ map }: TestPictureInputs, node: number, offset: number, count: number): number[] {
  const found: number[] = [];
  for (let panel = offset; panel < offset + count; panel++) if (map.nodeOf[panel] === node) found.push(panel);
  return found;
}

/** The same for all nodes of a surface, so that its lines run on. */
function hatchPitch({ types }: SurfaceTable): number {
  const least = Math.min(...types.map(({ pixelsWide, pixelsHigh }) => Math.min(pixelsWide, pixelsHigh)));
  return Math.max(leastPitch, Math.floor(least / hatchesAPanel));
}
