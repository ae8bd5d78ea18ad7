import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pictureTiles } from '../../../../src/ui/drawings/stage/picture-tiles';

test('pictureTiles: one for what is no larger, else as many as it takes, row by row', () => {
  expect(pictureTiles(2048, 1000, 2048)).toEqual([{ x: 0, y: 0, width: 2048, height: 1000 }]);
  expect(pictureTiles(3000, 2049, 2048)).toEqual([
    { x: 0, y: 0, width: 2048, height: 2048 },
    { x: 2048, y: 0, width: 952, height: 2048 },
    { x: 0, y: 2048, width: 2048, height: 1 },
    { x: 2048, y: 2048, width: 952, height: 1 },
  ]);
});

test('pictureTiles cover every pixel once', () => {
  const side = fc.integer({ min: 1, max: 40 });
  fc.assert(
    fc.property(side, side, fc.integer({ min: 1, max: 20 }), (width, height, most) => {
      const times = new Uint8Array(width * height);
      for (const tile of pictureTiles(width, height, most)) {
        expect(Math.max(tile.width, tile.height)).toBeLessThanOrEqual(most);
        for (let y = tile.y; y < tile.y + tile.height; y++) {
          for (let x = tile.x; x < tile.x + tile.width; x++) times[y * width + x]!++;
        }
      }
      expect(times.every((count) => count === 1)).toBe(true);
    }),
  );
});
