import type { NodesResults, RenderNode } from '../nodes/node-result';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import type { PixelMap } from './map-pixels';
import { type SurfaceMesh, surfaceMesh } from './surface-mesh';

/** Every surface that has panels, with its mesh, and the nodes that the meshes' parts count in. */
export interface StageMeshes {
  readonly surfaces: readonly { readonly table: SurfaceTable; readonly mesh: SurfaceMesh }[];
  readonly nodes: readonly Pick<RenderNode, 'name' | 'canvasWidth' | 'canvasHeight'>[];
}

/** Meshes of the whole stage, in the order of its surfaces. */
export function stageMeshes(
  { surfaces, offsets }: SurfaceSet,
  map: PixelMap,
  { nodes }: Pick<NodesResults, 'nodes'>,
): StageMeshes {
  const all = surfaces.map((table, s) => ({ table, mesh: surfaceMesh(table, offsets[s]!, map, nodes) }));
  return { surfaces: all.filter(({ table }) => table.count > 0), nodes };
}
