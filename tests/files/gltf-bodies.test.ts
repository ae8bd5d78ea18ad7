import { expect, test } from 'vitest';
import { boxMesh, floorMesh, hallMesh, panelMesh } from '../../src/files/gltf-bodies';
import { createGltfBuffer } from '../../src/files/gltf-buffer';

type Mesh = {
  primitives: {
    attributes: { POSITION: number; NORMAL?: number };
    indices: number;
    material?: number;
    mode?: number;
  }[];
};
const size = { widthMm: 500, heightMm: 1000, depthMm: 80 };

/** Points of a primitive in threes, and its triangles. */
function made(build: (buffer: ReturnType<typeof createGltfBuffer>) => object) {
  const buffer = createGltfBuffer();
  const { primitives } = build(buffer) as Mesh;
  const threes = (accessor: number) => {
    const values = [...buffer.values[accessor]!];
    return Array.from({ length: values.length / 3 }, (_, i) => values.slice(i * 3, i * 3 + 3));
  };
  return primitives.map(({ attributes, indices, ...rest }) => ({
    points: threes(attributes.POSITION),
    normals: attributes.NORMAL === undefined ? [] : threes(attributes.NORMAL),
    indices: [...buffer.values[indices]!],
    ...rest,
  }));
}

/** Normal of a triangle by its corners in their order. */
function facing(points: number[][], [a, b, c]: readonly number[]): number[] {
  const [p, q, r] = [points[a!]!, points[b!]!, points[c!]!];
  const u = q.map((value, i) => value - p[i]!);
  const v = r.map((value, i) => value - p[i]!);
  const n = [u[1]! * v[2]! - u[2]! * v[1]!, u[2]! * v[0]! - u[0]! * v[2]!, u[0]! * v[1]! - u[1]! * v[0]!];
  return n.map((value) => Math.round(value / Math.hypot(...n)) + 0);
}

test('panelMesh has its LED face at the origin and its depth behind, each of a material of its own', () => {
  const [face, back] = made((buffer) => panelMesh(buffer, { ...size, name: 'P' }));
  expect([face!.material, back!.material]).toEqual([0, 1]);
  expect(face!.points).toEqual([
    [-0.25, -0.5, 0],
    [0.25, -0.5, 0],
    [0.25, 0.5, 0],
    [-0.25, 0.5, 0],
  ]);
  expect(back!.points).toHaveLength(20);
  expect(new Set(back!.points.map(([, , z]) => z!.toFixed(3)))).toEqual(new Set(['-0.080', '0.000']));
});

test('boxMesh: each of twelve triangles faces outwards, as its normal says', () => {
  const [{ points, normals, indices }] = made((buffer) => boxMesh(buffer, size)) as [ReturnType<typeof made>[number]];
  expect(indices).toHaveLength(36);
  for (let i = 0; i < indices.length; i += 3) {
    const triangle = indices.slice(i, i + 3);
    const normal = facing(points, triangle);
    expect(normals[triangle[0]!]).toEqual(normal);
    // Outwards from the middle of the box, 40 mm behind its front.
    const middle = [0, 0, -0.04];
    const out = points[triangle[0]!]!.reduce((sum, value, axis) => sum + (value - middle[axis]!) * normal[axis]!, 0);
    expect(out).toBeGreaterThan(0);
  }
});

const hall = { leftMm: -1000, rightMm: 3000, lowMm: -2000, highMm: 5000 };

test('floorMesh faces up, plan y running to -z', () => {
  const [{ points, indices }] = made((buffer) => floorMesh(buffer, hall)) as [ReturnType<typeof made>[number]];
  expect(points).toEqual([
    [-1, 0, 2],
    [3, 0, 2],
    [3, 0, -5],
    [-1, 0, -5],
  ]);
  expect(facing(points, indices.slice(0, 3))).toEqual([0, 1, 0]);
});

test('hallMesh is four edges, or twelve where the clear height is stated, as lines', () => {
  const edges = (clearHeightMm: number | null) => made((buffer) => hallMesh(buffer, hall, clearHeightMm))[0]!;
  expect(edges(null)).toMatchObject({ mode: 1, indices: [0, 1, 1, 2, 2, 3, 3, 0] });
  const { points, indices } = edges(9000);
  expect(indices).toHaveLength(24);
  expect(Math.max(...points.map(([, y]) => y!))).toBe(9);
  // Every edge is parallel to an axis.
  for (let i = 0; i < indices.length; i += 2) {
    const [a, b] = [points[indices[i]!]!, points[indices[i + 1]!]!];
    expect(a.filter((value, axis) => value !== b[axis])).toHaveLength(1);
  }
});
