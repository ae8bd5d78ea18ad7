import { expect, test } from 'vitest';
import { checkLongestSide } from '../../../src/calc/nodes/check-longest-side';
import { cornerNodes } from '../outputs/corner-stage';

const [node] = cornerNodes.nodes;
const of = (...sizes: readonly (readonly [number, number])[]) =>
  checkLongestSide({
    nodes: sizes.map(([canvasWidth, canvasHeight], i) => ({ ...node!, name: `N${i + 1}`, canvasWidth, canvasHeight })),
  });

test('checkLongestSide passes a canvas of 16,384 px and watches one of a pixel more, wide or high', () => {
  // Common practice, no source: 16,384 px a side.
  expect(of([16_384, 2160])).toMatchObject([{ severity: 'pass', measured: 16_384, limit: 16_384 }]);
  expect(of([2880, 2688], [16_385, 100])).toMatchObject([
    { severity: 'watch', measured: 16_385, where: [{ kind: 'node', name: 'N2' }] },
  ]);
  expect(of([100, 16_385])).toMatchObject([{ severity: 'watch', measured: 16_385 }]);
});

test('checkLongestSide names at most fifty nodes, and says nothing without one', () => {
  expect(of(...Array.from({ length: 60 }, () => [20_000, 100] as const))[0]!.where).toHaveLength(50);
  expect(checkLongestSide({ nodes: [] })).toEqual([]);
});
