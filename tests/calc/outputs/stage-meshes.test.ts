import { expect, test } from 'vitest';
import { stageMeshes } from '../../../src/calc/outputs/stage-meshes';
import { cornerMap, cornerNodes, cornerSurfaces, cornerWall } from './corner-stage';

test('stageMeshes makes a mesh for each surface with panels, numbered through the stage', () => {
  const { surfaces, nodes } = stageMeshes(cornerSurfaces, cornerMap, cornerNodes);
  expect(surfaces.map(({ mesh }) => [mesh.surfaceId, [...mesh.panels]])).toEqual([
    ['wall', [0, 1, 2, 3]],
    ['ceiling', [4, 5]],
  ]);
  expect(nodes).toBe(cornerNodes.nodes);
});

test('stageMeshes leaves out a surface without panels', () => {
  const empty = { ...cornerWall, surfaceId: 'empty', count: 0 };
  const set = { surfaces: [empty, ...cornerSurfaces.surfaces], offsets: [0, 0, 4], total: 6 };
  const { surfaces } = stageMeshes(set, cornerMap, cornerNodes);
  expect(surfaces.map(({ mesh }) => mesh.surfaceId)).toEqual(['wall', 'ceiling']);
});
