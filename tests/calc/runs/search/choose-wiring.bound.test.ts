import { expect, test } from 'vitest';
import { boundShare } from './bound-share';

// The bound is proved, and not always attainable: a rectangle of 19 panels is 1 x 19. `npm run bench` prints larger samples.
// Rectangles whose canvas counts have a test file of their own, so that neither takes long.
test.each([
  [Number.POSITIVE_INFINITY, 60, 1],
  [2100, 24, 0.95],
] as const)(
  'chooseWiring with fewest ports first, panels counted and reach up to %d mm, reaches the bound on most of %i rectangles up to 40 x 20',
  {
    timeout: 60_000,
  },
  (reachMm, many, leastShare) => {
    const { share, ports, portsAtLeast } = boundShare({ seed: 29, many, counting: 'panels', reachMm });
    expect(share).toBeGreaterThanOrEqual(leastShare);
    expect(ports / portsAtLeast).toBeLessThan(1.02);
  },
);
