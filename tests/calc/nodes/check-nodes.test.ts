import { expect, test } from 'vitest';
import { checkNodes } from '../../../src/calc/nodes/check-nodes';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainResults, zonesOf } from './plain-nodes';

const wall = plainSurface({ columns: 6, bands: [{ type: plainType(100), rows: 2 }] });

test('checkNodes gives checks of the chapter, each with an id of its own', () => {
  const { inputs, results } = plainResults({ tables: [wall], zones: zonesOf(wall, 3) });
  const checks = checkNodes(inputs, results);
  expect(checks.map(({ id }) => id)).toEqual(expect.arrayContaining(['nodes.equal.A', 'nodes.canvas.A']));
  expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
  expect(checks.every(({ chapter }) => chapter === 'nodes')).toBe(true);
});
