import type { OutputsInputs } from '../../src/calc/outputs/outputs-inputs';
import { newTable } from '../../src/calc/surfaces/new-table';

const px = 192;
const columnsANode = 15;
const rows = 14;

/** A straight wall fed by so many nodes of 2880 x 2688 px, a run a column upwards: what the outputs follow from, without a plan. */
export function wallOfNodes(count: number, depthBits: 8 | 10): OutputsInputs {
  const columns = count * columnsANode;
  const type = { panelId: 'p', name: 'P', turnDeg: 0, widthMm: 500, heightMm: 500, depthMm: 80 } as const;
  const types = [{ ...type, pixelsWide: px, pixelsHigh: px }];
  const size = { count: columns * rows, columns, rows };
  const wall = { id: 'wall', letter: 'A', name: 'Wall' };
  const table = newTable(wall, 'wall', types, size, { width: columns * px, height: rows * px });
  for (let panel = 0; panel < table.count; panel++) {
    const [column, row] = [Math.floor(panel / rows), panel % rows];
    table.at[panel] = panel;
    table.column[panel] = column + 1;
    table.row[panel] = row + 1;
    table.xMm[panel] = column * 500 + 250;
    table.zMm[panel] = row * 500 + 250;
    table.canvasX[panel] = column * px;
    table.canvasY[panel] = (rows - 1 - row) * px;
  }
  const runs = Array.from({ length: columns }, (_, column) => {
    const zone = Math.floor(column / columnsANode);
    const port = `${zone + 1}A-${String((column % columnsANode) + 1).padStart(2, '0')}`;
    return { surfaceId: 'wall', zone, port, start: column * rows, count: rows };
  });
  const zones = Array.from({ length: count }, (_, zone) => ({
    surfaceId: 'wall',
    processor: zone + 1,
    firstColumn: zone * columnsANode + 1,
    columns: columnsANode,
    firstRow: 1,
    rows,
  }));
  const nodes = zones.map((_, node) => ({
    name: `N${node + 1}`,
    surfaceId: 'wall',
    letter: 'A',
    mode: { depthBits },
    canvasWidth: columnsANode * px,
    canvasHeight: rows * px,
    offsetX: node * columnsANode * px,
    offsetY: 0,
    crops: [],
  }));
  return {
    surfaces: { surfaces: [table], offsets: [0], total: table.count },
    zones,
    runs: {
      runs,
      order: Uint32Array.from(table.at),
      runOf: Int32Array.from(table.at, (panel) => Math.floor(panel / rows)),
      placeOf: Uint16Array.from(table.at, (panel) => (panel % rows) + 1),
    },
    fed: { nodes, nodeOfZone: zones.map((_, zone) => zone) },
  } as unknown as OutputsInputs;
}
