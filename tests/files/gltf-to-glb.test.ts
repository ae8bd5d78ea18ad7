import { validateBytes } from 'gltf-validator';
import { expect, test } from 'vitest';
import { stageMeshes } from '../../src/calc/outputs/stage-meshes';
import { gltfDocument } from '../../src/files/gltf-document';
import { gltfToGlb } from '../../src/files/gltf-to-glb';
import { cornerMap, cornerNodes, cornerSurfaces } from '../calc/outputs/corner-stage';

const glb = gltfToGlb(gltfDocument(stageMeshes(cornerSurfaces, cornerMap, cornerNodes), 'Corner'));

test('gltfToGlb passes the glTF validator without an error or a warning', async () => {
  const { issues, info } = await validateBytes(glb);
  expect(issues.messages.filter(({ severity }) => severity < 2)).toEqual([]);
  expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);
  // Six panels of four corners and two triangles; three nodes and the panel without one.
  expect(info).toMatchObject({ totalVertexCount: 24, totalTriangleCount: 12, materialCount: 4 });
});

test('gltfToGlb passes the validator for a stage without panels', async () => {
  const empty = gltfToGlb(gltfDocument({ surfaces: [], nodes: [] }, 'Nothing yet'));
  const { issues } = await validateBytes(empty);
  expect(issues.messages.filter(({ severity }) => severity < 2)).toEqual([]);
});

test('the validator bites: a file with one byte of its buffer cut off has errors', async () => {
  const { issues } = await validateBytes(glb.slice(0, -1));
  expect(issues.numErrors).toBeGreaterThan(0);
});

test('gltfToGlb writes magic, version and length as the specification has them', () => {
  // glTF 2.0, 4.4.2: 'glTF', version 2, length of the whole file.
  const file = Buffer.from(glb);
  expect(file.toString('latin1', 0, 4)).toBe('glTF');
  expect([file.readUInt32LE(4), file.readUInt32LE(8)]).toEqual([2, glb.length]);
});
