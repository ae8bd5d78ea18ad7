/** Component types and targets. Source: Khronos, glTF 2.0 (ISO/IEC 12113:2022), 3.6.2 and 5.11. */
const floats = 5126;
const unsignedInts = 5125;
const vertexTarget = 34962;
const indexTarget = 34963;

/** The one buffer of a glTF file as it is filled, and what its JSON says of it. */
export interface GltfBuffer {
  readonly values: readonly (Float32Array | Uint32Array)[];
  /** For `accessors`, `bufferViews` and `buffers` of the JSON; nothing while the buffer is empty. */
  readonly json: () => object;
  /** Index of the accessor of numbers that belong to vertices: two or three to each. */
  readonly put: (values: ArrayLike<number>, size: 2 | 3) => number;
  /** The same of positions, whose bounds the format wants. */
  readonly putPositions: (values: ArrayLike<number>) => number;
  readonly putIndices: (values: ArrayLike<number>) => number;
}

export function createGltfBuffer(): GltfBuffer {
  const values: (Float32Array | Uint32Array)[] = [];
  const bufferViews: object[] = [];
  const accessors: object[] = [];
  let byteLength = 0;

  function keep(kept: Float32Array | Uint32Array, target: number, accessor: object): number {
    values.push(kept);
    bufferViews.push({ buffer: 0, byteOffset: byteLength, byteLength: kept.byteLength, target });
    byteLength += kept.byteLength;
    return accessors.push({ bufferView: bufferViews.length - 1, ...accessor }) - 1;
  }
  function putVertices(given: ArrayLike<number>, size: 2 | 3, bounds: (kept: Float32Array) => object): number {
    const kept = Float32Array.from(given);
    const accessor = { componentType: floats, count: kept.length / size, type: `VEC${size}`, ...bounds(kept) };
    return keep(kept, vertexTarget, accessor);
  }

  return {
    values,
    json: () => (values.length === 0 ? {} : { accessors, bufferViews, buffers: [{ byteLength }] }),
    put: (given, size) => putVertices(given, size, () => ({})),
    putPositions: (given) => putVertices(given, 3, boundsOf),
    putIndices: (given) =>
      keep(Uint32Array.from(given), indexTarget, { componentType: unsignedInts, count: given.length, type: 'SCALAR' }),
  };
}

function boundsOf(positions: Float32Array): object {
  const min = [Infinity, Infinity, Infinity];
  const max = [-Infinity, -Infinity, -Infinity];
  positions.forEach((value, i) => {
    min[i % 3] = Math.min(min[i % 3]!, value);
    max[i % 3] = Math.max(max[i % 3]!, value);
  });
  return { min, max };
}
