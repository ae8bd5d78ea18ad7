import type { NodesResults } from '../calc/nodes/node-result';
import type { SurfaceSet } from '../calc/surfaces/surface-table';
import type { Zone } from '../calc/zones/zone-result';
import { counted } from '../units/counted';
import { panelOfZone } from './panel-of-zone';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';

interface NodesParts {
  readonly surfaces: SurfaceSet;
  readonly zones: readonly Zone[];
  readonly nodes: NodesResults['nodes'];
}

/** Crops: a row for each processor with the node that feeds it, where that node's canvas lies, and what it takes of it. */
export function scheduleNodes({ surfaces, zones, nodes }: NodesParts): Schedule {
  const crops = nodes.flatMap((node) => node.crops.map((crop) => ({ node, crop })));
  return {
    id: 'nodes',
    title: 'Crops by node',
    columns: [
      words('node', 'Node'),
      words('surface', 'Surface'),
      figures('processor', 'Processor', 'count'),
      figures('x', 'Crop from left', 'px'),
      figures('y', 'Crop from top', 'px'),
      figures('width', 'Crop width', 'px'),
      figures('height', 'Crop height', 'px'),
      figures('canvasWidth', 'Canvas width', 'px'),
      figures('canvasHeight', 'Canvas height', 'px'),
      figures('offsetX', 'Canvas from left', 'px'),
      figures('offsetY', 'Canvas from top', 'px'),
    ],
    count: crops.length,
    row: (index) => {
      const { node, crop } = crops[index]!;
      return [
        node.name,
        node.letter,
        crop.processor,
        crop.x,
        crop.y,
        crop.width,
        crop.height,
        node.canvasWidth,
        node.canvasHeight,
        node.offsetX,
        node.offsetY,
      ];
    },
    panelOf: (index) => panelOfZone(surfaces, zones[crops[index]!.crop.zone]!),
    totals: [counted(nodes.length, 'node'), counted(crops.length, 'processor'), ...new Array<null>(9).fill(null)],
  };
}
