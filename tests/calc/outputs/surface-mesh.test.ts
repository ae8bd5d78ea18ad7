import { expect, test } from 'vitest';
import { surfaceMesh } from '../../../src/calc/outputs/surface-mesh';
import { cornerMap, cornerNodes, cornerWall, smallCeiling } from './corner-stage';

const wall = surfaceMesh(cornerWall, 0, cornerMap, cornerNodes.nodes);
const ceiling = surfaceMesh(smallCeiling, 4, cornerMap, cornerNodes.nodes);

const tidy = (values: Float64Array) => Array.from(values, (value) => Math.round(value * 1e9) / 1e9 + 0);

test('surfaceMesh puts the corners of each face where the panel stands: lower left, lower right, upper right, upper left', () => {
  // A C1 R1: along x from 0 to 0.5 m at plan y 0, from 1 to 2 m up.
  expect(tidy(wall.positions.slice(0, 12))).toEqual([0, 1, 0, 0.5, 1, 0, 0.5, 2, 0, 0, 2, 0]);
  // A C2 R2: from plan (0.5, 0) to (0.5, -0.5), which is z 0 to 0.5, from 2 to 2.5 m up.
  expect(tidy(wall.positions.slice(36, 48))).toEqual([0.5, 2, 0, 0.5, 2, 0.5, 0.5, 2.5, 0.5, 0.5, 2.5, 0]);
  // B C1 R1, as seen from below: left is +x, lower is -y, which is the greater z.
  expect(tidy(ceiling.positions.slice(0, 12))).toEqual([0.25, 4, 2.5, -0.25, 4, 2.5, -0.25, 4, 2, 0.25, 4, 2]);
});

test('surfaceMesh turns every normal out of the LED face, the same for all four corners', () => {
  expect(tidy(wall.normals.slice(0, 12))).toEqual([0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1]);
  expect(tidy(wall.normals.slice(24, 27))).toEqual([-1, 0, 0]);
  expect(tidy(ceiling.normals.slice(0, 3))).toEqual([0, -1, 0]);
});

test('surfaceMesh winds its triangles counter-clockwise as seen from the lit side', () => {
  for (const { positions, normals, indices } of [wall, ceiling]) {
    for (let i = 0; i < indices.length; i += 3) {
      const [a, b, c] = [0, 1, 2].map((corner) => [0, 1, 2].map((axis) => positions[indices[i + corner]! * 3 + axis]!));
      const u = [0, 1, 2].map((axis) => b![axis]! - a![axis]!);
      const v = [0, 1, 2].map((axis) => c![axis]! - a![axis]!);
      const cross = [u[1]! * v[2]! - u[2]! * v[1]!, u[2]! * v[0]! - u[0]! * v[2]!, u[0]! * v[1]! - u[1]! * v[0]!];
      const along = cross.reduce((sum, one, axis) => sum + one * normals[indices[i]! * 3 + axis]!, 0);
      expect(along).toBeGreaterThan(0);
    }
  }
});

test('surfaceMesh lays texture coordinates on the canvas, counted from its top left', () => {
  // A C2 R1 is the right half of 200 px and the lower two thirds of 300 px; of N2, which begins at it, the whole width.
  expect(tidy(wall.surfaceUv.slice(16, 24))).toEqual([0.5, 1, 1, 1, 1, 0.333333333, 0.5, 0.333333333]);
  expect(tidy(wall.nodeUv.slice(16, 24))).toEqual([0, 1, 1, 1, 1, 0.333333333, 0, 0.333333333]);
});

test('surfaceMesh keeps the panels of each node together, those without one last', () => {
  expect([...wall.panels]).toEqual([0, 1, 2, 3]);
  expect(wall.parts).toEqual([
    { node: 0, start: 0, count: 12 },
    { node: 1, start: 12, count: 12 },
  ]);
  expect(ceiling.parts).toEqual([
    { node: 2, start: 0, count: 6 },
    { node: -1, start: 6, count: 6 },
  ]);
  expect([...ceiling.nodeUv.slice(8)]).toEqual([0, 0, 0, 0, 0, 0, 0, 0]);
});

test('surfaceMesh orders panels by node where nodes lie across the order of columns', () => {
  const crossed = { ...cornerMap, nodeOf: Int32Array.of(1, 0, 1, -1, -1, -1) };
  const mesh = surfaceMesh(cornerWall, 0, crossed, cornerNodes.nodes);
  expect([...mesh.panels]).toEqual([1, 0, 2, 3]);
  expect(mesh.parts.map(({ node, count }) => [node, count])).toEqual([
    [0, 6],
    [1, 12],
    [-1, 6],
  ]);
  // The first vertices are those of A C1 R2.
  expect(tidy(mesh.positions.slice(0, 3))).toEqual([0, 2, 0]);
});
