import type { NodesResults } from '../calc/nodes/node-result';
import { mapPixels } from '../calc/outputs/map-pixels';
import { panelAt } from '../calc/surfaces/panel-at';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';
import type { StageParts } from './stage-parts';

/**
 * Pixel map: where every panel finds its pixels on the canvas of its node, and its whole way there. Canvas x and y are the
 * panel's top left pixel on that canvas, y down from the top row as seen from inside; width and height are those on the canvas,
 * after the panel's turn.
 */
export function schedulePixelMap(
  { surfaces, zones, runs }: Pick<StageParts, 'surfaces' | 'zones' | 'runs'>,
  fed: Pick<NodesResults, 'nodes' | 'nodeOfZone'>,
): Schedule {
  const map = mapPixels(surfaces, zones, fed);
  return {
    id: 'pixel-map',
    title: 'Pixel map',
    columns: [
      words('panel', 'Panel'),
      words('surface', 'Surface'),
      figures('column', 'Column', 'count'),
      figures('row', 'Row', 'count'),
      figures('canvasX', 'Canvas x', 'px'),
      figures('canvasY', 'Canvas y', 'px'),
      figures('width', 'Width', 'px'),
      figures('height', 'Height', 'px'),
      figures('turn', 'Turn', 'deg'),
      words('node', 'Node'),
      figures('processor', 'Processor', 'count'),
      words('breakout', 'Breakout'),
      words('port', 'Port'),
      figures('place', 'Place on run', 'count'),
    ],
    count: surfaces.total,
    row: (index) => {
      const { name, surface, column, row, type } = panelAt(surfaces, index)!;
      const node = fed.nodes[map.nodeOf[index]!];
      const run = runs.runs[runs.runOf[index]!];
      return [
        name,
        surface.letter,
        column,
        row,
        node === undefined ? null : map.x[index]!,
        node === undefined ? null : map.y[index]!,
        type.pixelsWide,
        type.pixelsHigh,
        type.turnDeg,
        node?.name ?? null,
        zones[map.zoneOf[index]!]?.processor ?? null,
        run === undefined ? null : breakoutOf(run.port),
        run?.port ?? null,
        run === undefined ? null : runs.placeOf[index]!,
      ];
    },
    panelOf: (index) => index,
    totals: null,
  };
}

/** '3B' of '3B-04'; null for a port that stands on the processor itself, '3-04'. */
function breakoutOf(port: string): string | null {
  return /^\d+[A-Z]+/.exec(port)?.[0] ?? null;
}
