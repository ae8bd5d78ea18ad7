import { expect, test } from 'vitest';
import { stageMeshes } from '../../../../src/calc/outputs/stage-meshes';
import { faceArrays } from '../../../../src/ui/drawings/stage/face-arrays';
import { cornerMap, cornerNodes, cornerSurfaces } from '../../../calc/outputs/corner-stage';

const faces = faceArrays(stageMeshes(cornerSurfaces, cornerMap, cornerNodes));

test('faceArrays has the faces of every node, and of panels without a node none', () => {
  expect(faces.map(({ surfaceId, node, indices }) => [surfaceId, node, indices.length])).toEqual([
    ['wall', 0, 12],
    ['wall', 1, 12],
    ['ceiling', 2, 6],
  ]);
});

test('faceArrays counts the vertices of each node from 0', () => {
  const [, second] = faces;
  expect([...second!.indices]).toEqual([0, 1, 2, 0, 2, 3, 4, 5, 6, 4, 6, 7]);
  // Lower left corner of A C2 R1: plan (0.5, 0), 1 m up; on the canvas of N2 its left edge, at the bottom.
  expect([...second!.positions.subarray(0, 3)].map((one) => one + 0)).toEqual([0.5, 1, 0]);
  expect([...second!.uv.subarray(0, 2)]).toEqual([0, 1]);
});
