import { expect, test } from 'vitest';
import { stageMeshes } from '../../src/calc/outputs/stage-meshes';
import { gltfDocument } from '../../src/files/gltf-document';
import { gltfToGlb } from '../../src/files/gltf-to-glb';
import { cornerMap, cornerNodes, cornerSurfaces } from '../calc/outputs/corner-stage';
import { readGlb } from './read-glb';

const { json, numbers } = readGlb(
  gltfToGlb(gltfDocument(stageMeshes(cornerSurfaces, cornerMap, cornerNodes), 'Corner')),
);

test('gltfDocument has a mesh a surface, a primitive and a material a node, and says how large their canvases are', () => {
  expect(json.nodes).toEqual([
    { name: 'A Corner wall', mesh: 0 },
    { name: 'B Ceiling', mesh: 1 },
  ]);
  expect(json.meshes.map(({ extras }) => extras)).toEqual([
    { canvasWidth: 200, canvasHeight: 300 },
    { canvasWidth: 100, canvasHeight: 200 },
  ]);
  const names = json.meshes.map(({ primitives }) => primitives.map(({ material }) => json.materials[material]!.name));
  expect(names).toEqual([
    ['N1', 'N2'],
    ['N3', 'no node'],
  ]);
  expect(json.materials[0]!.extras).toEqual({ canvasWidth: 100, canvasHeight: 300 });
});

test('gltfDocument read back: corners in metres with y up, texture coordinates from the top left', () => {
  const [, second] = json.meshes[0]!.primitives;
  const first = numbers(second!.indices)[0]!;
  const at = (accessor: number, size: number) => numbers(accessor).slice(first * size, (first + 1) * size);
  expect(first).toBe(0);
  // Lower left corner of A C2 R1: plan (0.5, 0), 1 m up; on the surface half across and at the bottom, of N2 at its left.
  expect(at(second!.attributes.POSITION, 3).map((one) => one + 0)).toEqual([0.5, 1, 0]);
  expect(at(second!.attributes.TEXCOORD_0, 2)).toEqual([0.5, 1]);
  expect(at(second!.attributes.TEXCOORD_1, 2)).toEqual([0, 1]);
  const normal = at(second!.attributes.NORMAL, 3);
  [-1, 0, 0].forEach((one, axis) => {
    expect(normal[axis]).toBeCloseTo(one, 6);
  });
});
