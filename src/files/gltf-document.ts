import type { StageMeshes } from '../calc/outputs/stage-meshes';
import type { MeshPart, SurfaceMesh } from '../calc/outputs/surface-mesh';
import { createGltfBuffer, type GltfBuffer } from './gltf-buffer';
import { surfaceName } from './surface-name';

/** The JSON of a glTF file and the numbers that its one buffer holds, in their order. */
export interface GltfDocument {
  readonly json: object;
  readonly buffer: GltfBuffer['values'];
}

/**
 * A mesh a surface under a node of its name; in it a primitive for each render node, with a material of the node's name, so
 * that a picture is given to each. TEXCOORD_0 is the surface's canvas, TEXCOORD_1 the canvas of that node; sizes of both
 * stand in `extras`. Source: Khronos, glTF 2.0 (ISO/IEC 12113:2022).
 */
export function gltfDocument({ surfaces, nodes }: StageMeshes, title: string): GltfDocument {
  const buffer = createGltfBuffer();
  const materials: object[] = [];
  const materialOf = new Map<number, number>();

  const materialFor = (node: number): number => {
    const known = materialOf.get(node);
    if (known !== undefined) return known;
    const { name, ...canvas } = nodes[node] ?? { name: 'no node' };
    const index = materials.push({ name, ...matt, ...('canvasWidth' in canvas ? { extras: sizeOf(canvas) } : {}) }) - 1;
    materialOf.set(node, index);
    return index;
  };

  const primitive = (mesh: SurfaceMesh, { node, start, count }: MeshPart): object => {
    // Its panels stand together, six indices and four vertices each, so that it has its vertices to itself.
    const panels = [start / 6, (start + count) / 6] as const;
    const part = (values: Float64Array, size: number) => values.subarray(panels[0] * 4 * size, panels[1] * 4 * size);
    return {
      attributes: {
        POSITION: buffer.putPositions(part(mesh.positions, 3)),
        NORMAL: buffer.put(part(mesh.normals, 3), 3),
        TEXCOORD_0: buffer.put(part(mesh.surfaceUv, 2), 2),
        TEXCOORD_1: buffer.put(part(mesh.nodeUv, 2), 2),
      },
      indices: buffer.putIndices(mesh.indices.subarray(start, start + count).map((index) => index - panels[0] * 4)),
      material: materialFor(node),
    };
  };

  const meshes = surfaces.map(({ table, mesh }) => ({
    name: surfaceName(table),
    primitives: mesh.parts.map((part) => primitive(mesh, part)),
    extras: sizeOf(table),
  }));
  const isEmpty = meshes.length === 0;
  return {
    buffer: buffer.values,
    json: {
      asset: { version: '2.0', generator: 'Voussoir' },
      scene: 0,
      scenes: [{ name: title, ...(isEmpty ? {} : { nodes: meshes.map((_, index) => index) }) }],
      ...(isEmpty
        ? {}
        : { nodes: surfaces.map(({ table }, mesh) => ({ name: surfaceName(table), mesh })), meshes, materials }),
      ...buffer.json(),
    },
  };
}

/** Plain grey without gloss. */
const matt = {
  pbrMetallicRoughness: { baseColorFactor: [0.5, 0.5, 0.5, 1], metallicFactor: 0, roughnessFactor: 1 },
};

const sizeOf = (canvas: { readonly canvasWidth: number; readonly canvasHeight: number }) => ({
  canvasWidth: canvas.canvasWidth,
  canvasHeight: canvas.canvasHeight,
});
