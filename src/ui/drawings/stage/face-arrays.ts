import type { StageMeshes } from '../../../calc/outputs/stage-meshes';

/** Faces of one surface that one node feeds, as the graphics card takes them: metres with y up, shares of the node's canvas. */
export interface FaceArrays {
  readonly surfaceId: string;
  readonly node: number;
  readonly positions: Float32Array;
  readonly uv: Float32Array;
  readonly indices: Uint32Array;
}

/** Parts of all meshes that a node feeds. The scene has the axes of the meshes. */
export function faceArrays({ surfaces }: Pick<StageMeshes, 'surfaces'>): FaceArrays[] {
  return surfaces.flatMap(({ mesh }) =>
    mesh.parts
      .filter(({ node }) => node >= 0)
      .map(({ node, start, count }) => {
        // Six indices and four vertices a panel; the panels of a part stand together.
        const first = (start / 6) * 4;
        const last = ((start + count) / 6) * 4;
        return {
          surfaceId: mesh.surfaceId,
          node,
          positions: Float32Array.from(mesh.positions.subarray(first * 3, last * 3)),
          uv: Float32Array.from(mesh.nodeUv.subarray(first * 2, last * 2)),
          indices: mesh.indices.subarray(start, start + count).map((index) => index - first),
        };
      }),
  );
}
