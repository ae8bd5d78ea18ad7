import type { StageMeshes } from '../calc/outputs/stage-meshes';
import type { MeshPart, SurfaceMesh } from '../calc/outputs/surface-mesh';

/** Component types and targets. Source: Khronos, glTF 2.0 (ISO/IEC 12113:2022), 3.6.2 and 5.11. */
const floats = 5126;
const unsignedInts = 5125;
const vertexTarget = 34962;
const indexTarget = 34963;

/** The JSON of a glTF file and the numbers that its one buffer holds, in their order. */
export interface GltfDocument {
  readonly json: object;
  readonly buffer: readonly (Float32Array | Uint32Array)[];
}

/**
 * A mesh a surface under a node of its name; in it a primitive for each render node, with a material of the node's name, so
 * that a picture is given to each. TEXCOORD_0 is the surface's canvas, TEXCOORD_1 the canvas of that node; sizes of both
 * stand in `extras`. Source: Khronos, glTF 2.0 (ISO/IEC 12113:2022).
 */
export function gltfDocument({ surfaces, nodes }: StageMeshes, title: string): GltfDocument {
  const buffer: (Float32Array | Uint32Array)[] = [];
  const bufferViews: object[] = [];
  const accessors: object[] = [];
  const materials: object[] = [];
  const materialOf = new Map<number, number>();
  let byteLength = 0;

  const put = (values: Float32Array | Uint32Array, target: number): number => {
    buffer.push(values);
    bufferViews.push({ buffer: 0, byteOffset: byteLength, byteLength: values.byteLength, target });
    byteLength += values.byteLength;
    return bufferViews.length - 1;
  };
  const vertices = (
    values: Float64Array,
    type: 'VEC2' | 'VEC3',
    bounds: (kept: Float32Array) => object = () => ({}),
  ) => {
    const kept = Float32Array.from(values);
    const bufferView = put(kept, vertexTarget);
    const count = kept.length / (type === 'VEC2' ? 2 : 3);
    return accessors.push({ bufferView, componentType: floats, count, type, ...bounds(kept) }) - 1;
  };
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
    const attributes = {
      POSITION: vertices(part(mesh.positions, 3), 'VEC3', boundsOf),
      NORMAL: vertices(part(mesh.normals, 3), 'VEC3'),
      TEXCOORD_0: vertices(part(mesh.surfaceUv, 2), 'VEC2'),
      TEXCOORD_1: vertices(part(mesh.nodeUv, 2), 'VEC2'),
    };
    const own = mesh.indices.subarray(start, start + count).map((index) => index - panels[0] * 4);
    const bufferView = put(own, indexTarget);
    const indices = accessors.push({ bufferView, componentType: unsignedInts, count, type: 'SCALAR' }) - 1;
    return { attributes, indices, material: materialFor(node) };
  };

  const meshes = surfaces.map(({ table, mesh }) => ({
    name: surfaceName(table),
    primitives: mesh.parts.map((part) => primitive(mesh, part)),
    extras: sizeOf(table),
  }));
  const isEmpty = meshes.length === 0;
  return {
    buffer,
    json: {
      asset: { version: '2.0', generator: 'Voussoir' },
      scene: 0,
      scenes: [{ name: title, ...(isEmpty ? {} : { nodes: meshes.map((_, index) => index) }) }],
      ...(isEmpty
        ? {}
        : {
            nodes: surfaces.map(({ table }, mesh) => ({ name: surfaceName(table), mesh })),
            meshes,
            materials,
            accessors,
            bufferViews,
            buffers: [{ byteLength }],
          }),
    },
  };
}

/** Plain grey without gloss. */
const matt = {
  pbrMetallicRoughness: { baseColorFactor: [0.5, 0.5, 0.5, 1], metallicFactor: 0, roughnessFactor: 1 },
};

const surfaceName = ({ letter, name }: { readonly letter: string; readonly name: string }) =>
  `${letter} ${name}`.trim();

const sizeOf = (canvas: { readonly canvasWidth: number; readonly canvasHeight: number }) => ({
  canvasWidth: canvas.canvasWidth,
  canvasHeight: canvas.canvasHeight,
});

function boundsOf(positions: Float32Array): object {
  const min = [Infinity, Infinity, Infinity];
  const max = [-Infinity, -Infinity, -Infinity];
  positions.forEach((value, i) => {
    min[i % 3] = Math.min(min[i % 3]!, value);
    max[i % 3] = Math.max(max[i % 3]!, value);
  });
  return { min, max };
}
