import { expect, test } from 'vitest';
import { boundShare } from './bound-share';

// The bound is proved, and not always attainable: a rectangle of 19 panels is 1 x 19. `npm run bench` prints larger samples.
test.each([
  ['panels', Number.POSITIVE_INFINITY, 60, 1],
  ['panels', 2100, 30, 0.95],
  ['rectangle', Number.POSITIVE_INFINITY, 8, 0.75],
  ['rectangle', 2100, 8, 0.75],
] as const)(
  'chooseWiring with fewest ports first, %s counted and reach up to %d mm, reaches the bound on most of %i rectangles up to 40 x 20',
  { timeout: 300_000 },
  (counting, reachMm, many, leastShare) => {
    const { share, ports, portsAtLeast } = boundShare({ seed: 29, many, counting, reachMm });
    expect(share).toBeGreaterThanOrEqual(leastShare);
    expect(ports / portsAtLeast).toBeLessThan(1.02);
  },
);
