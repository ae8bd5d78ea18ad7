import { expect, test } from 'vitest';
import { paintTestPicture } from '../../../../src/calc/outputs/picture/paint-test-picture';
import { groundOfRun, pictureInks } from '../../../../src/calc/outputs/picture/picture-inks';
import { cornerNodes, cornerPicture } from '../corner-stage';

test('paintTestPicture has the exact size of the node’s canvas', () => {
  const sizes = cornerNodes.nodes.map((_, node) => paintTestPicture(cornerPicture, node));
  expect(sizes.map(({ width, height }) => [width, height])).toEqual([
    [100, 300],
    [100, 300],
    [100, 200],
  ]);
});

test('paintTestPicture borders every panel by one pixel, between neighbours by one each', () => {
  const { inks } = paintTestPicture(cornerPicture, 0);
  const ink = (x: number, y: number) => inks[y * 100 + x];
  for (let x = 0; x < 100; x++) {
    // A C1 R2 is 100 px high and stands on A C1 R1.
    for (const y of [0, 99, 100, 299]) expect(ink(x, y)).toBe(pictureInks.border);
  }
  for (let y = 0; y < 300; y++) for (const x of [0, 99]) expect(ink(x, y)).toBe(pictureInks.border);
  expect(ink(50, 98)).not.toBe(pictureInks.border);
  expect(ink(50, 101)).not.toBe(pictureInks.border);
});

test('paintTestPicture leaves black what no panel shows', () => {
  // The ceiling's upper panel is driven by no zone: the upper half of the canvas of N3.
  const { inks } = paintTestPicture(cornerPicture, 2);
  expect(new Set(inks.subarray(0, 100 * 100))).toEqual(new Set([pictureInks.blank]));
  expect(inks.subarray(100 * 100)).toContain(groundOfRun(2).ground);
});

test('paintTestPicture paints each run in its own colour, and of another node’s nothing', () => {
  const { inks } = paintTestPicture(cornerPicture, 1);
  expect(inks).toContain(groundOfRun(1).ground);
  expect(inks).not.toContain(groundOfRun(0).ground);
});

test('paintTestPicture is the same each time', () => {
  expect(paintTestPicture(cornerPicture, 0)).toEqual(paintTestPicture(cornerPicture, 0));
});

test('paintTestPicture of a node that is not there throws', () => {
  expect(() => paintTestPicture(cornerPicture, 9)).toThrow('no node 9');
});
