import { expect, test } from 'vitest';
import { outputNotes } from '../../src/files/output-notes';
import { cornerNodes } from '../calc/outputs/corner-stage';

test('outputNotes name the stage, every file, and every node with its canvas and the crops of its processors', () => {
  const lines = outputNotes(cornerNodes.nodes, 'Corner stage').split('\r\n');
  expect(lines[0]).toBe('Corner stage');
  for (const name of ['pixel-map.csv', 'stage.glb', 'stage.obj', 'pictures', 'pictures-16-bit']) {
    expect(lines.some((line) => line.startsWith(name))).toBe(true);
  }
  const n2 = lines.indexOf('N2  surface A, canvas 100 x 300, begins at 100, 0 of the surface');
  expect(lines[n2 + 1]).toBe('    processor 2: 100 x 300 from 0, 0');
  expect(lines.every((line) => line.length <= 110)).toBe(true);
});
