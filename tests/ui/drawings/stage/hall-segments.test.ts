import { expect, it } from 'vitest';
import { hallSegments } from '../../../../src/ui/drawings/stage/hall-segments';

const hall = { leftMm: -5000, rightMm: 5000, lowMm: -3000, highMm: 4000 };

it('hallSegments draws floor, posts and upper edge of a hall of known height, else its floor', () => {
  expect(hallSegments(hall, 9000).length / 6).toBe(12);
  expect(hallSegments(hall, null).length / 6).toBe(4);
  expect(hallSegments(null, 9000)).toHaveLength(0);
  // Plan y upwards is scene z backwards.
  expect([...hallSegments(hall, null).slice(0, 6)]).toEqual([-5, 0, 3, 5, 0, 3]);
});
