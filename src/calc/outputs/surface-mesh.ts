import type { RenderNode } from '../nodes/node-result';
import type { SurfaceTable } from '../surfaces/surface-table';
import type { PixelMap } from './map-pixels';
import { type PanelAxes, panelAxes } from './panel-axes';

/** Panels of a mesh that one node feeds. */
export interface MeshPart {
  /** Index of the node; -1: no node feeds them. */
  readonly node: number;
  /** Its indices are `indices[start .. start + count - 1]`. */
  readonly start: number;
  readonly count: number;
}

/**
 * LED faces of one surface, four vertices a panel: lower left, lower right, upper right, upper left as seen from its lit
 * side. Metres from the stage's origin with y up and right-handed: plan (x, y, z) is (x, z, -y). Panel i of `panels` has the
 * vertices 4 i to 4 i + 3. Neighbours share none, so that each face is flat and keeps its own pixels.
 */
export interface SurfaceMesh {
  readonly surfaceId: string;
  /** Numbers of the panels through all surfaces, node by node. */
  readonly panels: Uint32Array;
  /** 3 numbers a vertex. */
  readonly positions: Float64Array;
  readonly normals: Float64Array;
  /** 2 numbers a vertex, shares of width and height from the top left: on the surface's canvas. */
  readonly surfaceUv: Float64Array;
  /** The same on the canvas of the node that feeds the panel; 0 where none does. */
  readonly nodeUv: Float64Array;
  /** Two triangles a panel, counter-clockwise as seen from its lit side. */
  readonly indices: Uint32Array;
  readonly parts: readonly MeshPart[];
}

/** Corners in shares of width across and height up, from the middle; the order of the vertices. */
const corners = [
  [-0.5, -0.5],
  [0.5, -0.5],
  [0.5, 0.5],
  [-0.5, 0.5],
] as const;

/** `offset`: number of the surface's first panel through all surfaces. */
export function surfaceMesh(
  table: SurfaceTable,
  offset: number,
  map: PixelMap,
  nodes: readonly Pick<RenderNode, 'canvasWidth' | 'canvasHeight'>[],
): SurfaceMesh {
  const { panels, parts } = panelsByNode(table, offset, map);
  const mesh: SurfaceMesh = {
    surfaceId: table.surfaceId,
    panels,
    positions: new Float64Array(table.count * 12),
    normals: new Float64Array(table.count * 12),
    surfaceUv: new Float64Array(table.count * 8),
    nodeUv: new Float64Array(table.count * 8),
    indices: new Uint32Array(table.count * 6),
    parts,
  };
  for (let i = 0; i < table.count; i++) {
    const panel = panels[i]!;
    const local = panel - offset;
    const type = table.types[table.type[local]!]!;
    const pixels = { width: type.pixelsWide, height: type.pixelsHigh };
    writeFace(mesh, i, table, local);
    const onSurface = { x: table.canvasX[local]!, y: table.canvasY[local]! };
    writeUv(mesh.surfaceUv, i, onSurface, pixels, table);
    const node = nodes[map.nodeOf[panel]!];
    if (node !== undefined) writeUv(mesh.nodeUv, i, { x: map.x[panel]!, y: map.y[panel]! }, pixels, node);
    mesh.indices.set([i * 4, i * 4 + 1, i * 4 + 2, i * 4, i * 4 + 2, i * 4 + 3], i * 6);
  }
  return mesh;
}

/** Panels in the order of their nodes, those without one last, and where each node's begin. */
function panelsByNode(table: SurfaceTable, offset: number, map: PixelMap): Pick<SurfaceMesh, 'panels' | 'parts'> {
  const byNode = new Map<number, number[]>();
  for (let panel = offset; panel < offset + table.count; panel++) {
    const node = map.nodeOf[panel]!;
    const known = byNode.get(node);
    if (known === undefined) byNode.set(node, [panel]);
    else known.push(panel);
  }
  const last = (node: number) => (node < 0 ? Infinity : node);
  const nodes = [...byNode.keys()].sort((a, b) => (last(a) < last(b) ? -1 : 1));
  let start = 0;
  const parts = nodes.map((node) => {
    const part = { node, start, count: byNode.get(node)!.length * 6 };
    start += part.count;
    return part;
  });
  return { panels: Uint32Array.from(nodes.flatMap((node) => byNode.get(node)!)), parts };
}

function writeFace(mesh: SurfaceMesh, place: number, table: SurfaceTable, local: number): void {
  const axes: PanelAxes = panelAxes(table, local);
  const type = table.types[table.type[local]!]!;
  const middle = [table.xMm[local]!, table.yMm[local]!, table.zMm[local]!] as const;
  corners.forEach(([across, up], corner) => {
    const along = (axis: 0 | 1 | 2) =>
      (middle[axis] + axes.across[axis] * across * type.widthMm + axes.up[axis] * up * type.heightMm) / 1000;
    const at = (place * 4 + corner) * 3;
    mesh.positions.set([along(0), along(2), 0 - along(1)], at);
    mesh.normals.set([axes.out[0], axes.out[2], 0 - axes.out[1]], at);
  });
}

function writeUv(
  uv: Float64Array,
  place: number,
  { x, y }: { readonly x: number; readonly y: number },
  { width, height }: { readonly width: number; readonly height: number },
  canvas: { readonly canvasWidth: number; readonly canvasHeight: number },
): void {
  corners.forEach(([across, up], corner) => {
    uv.set(
      [(x + (across + 0.5) * width) / canvas.canvasWidth, (y + (0.5 - up) * height) / canvas.canvasHeight],
      (place * 4 + corner) * 2,
    );
  });
}
