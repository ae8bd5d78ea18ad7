import { expect, test } from 'vitest';
import { stageMeshes } from '../../src/calc/outputs/stage-meshes';
import { meshesToObj } from '../../src/files/meshes-to-obj';
import { cornerMap, cornerNodes, cornerSurfaces } from '../calc/outputs/corner-stage';

const { obj, mtl } = meshesToObj(stageMeshes(cornerSurfaces, cornerMap, cornerNodes), 'corner.mtl');
const lines = obj.split('\n');
const of = (word: string) =>
  lines.filter((line) => line.startsWith(`${word} `)).map((line) => line.slice(word.length + 1));

test('meshesToObj writes four vertices, four texture coordinates, a normal and a face for each panel', () => {
  expect([of('v').length, of('vt').length, of('vn').length, of('f').length]).toEqual([24, 24, 6, 6]);
  expect(of('o')).toEqual(['A_Corner_wall', 'B_Ceiling']);
  expect(of('mtllib')).toEqual(['corner.mtl']);
});

test('meshesToObj counts v from the bottom and indices from 1, through all surfaces', () => {
  // A C1 R1: left half, lower two thirds of the canvas of 300 px.
  expect(of('v').slice(0, 4)).toEqual(['0 1 0', '0.5 1 0', '0.5 2 0', '0 2 0']);
  expect(of('vt').slice(0, 4)).toEqual(['0 0', '0.5 0', '0.5 0.666666667', '0 0.666666667']);
  expect(of('vn')[0]).toBe('0 0 1');
  expect(of('f')[0]).toBe('1/1/1 2/2/1 3/3/1 4/4/1');
  // The ceiling's first panel follows the wall's four.
  expect(of('f')[4]).toBe('17/17/5 18/18/5 19/19/5 20/20/5');
});

test('meshesToObj names a material for each node, and each is there in the second file', () => {
  expect(of('usemtl')).toEqual(['N1', 'N2', 'N3', 'no_node']);
  expect(mtl.split('\n').filter((line) => line.startsWith('newmtl '))).toEqual([
    'newmtl N1',
    'newmtl N2',
    'newmtl N3',
    'newmtl no_node',
  ]);
});
