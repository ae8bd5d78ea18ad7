import { expect, test } from 'vitest';
import { boundShare } from './bound-share';

// The bound is proved, and not always attainable: see choose-wiring.bound.test.ts.
test('chooseWiring with fewest ports first, the rectangle counted and reach up to 2100 mm, reaches the bound on most of eight rectangles up to 40 x 20', {
  timeout: 60_000,
}, () => {
  const { share, ports, portsAtLeast } = boundShare({ seed: 29, many: 8, counting: 'rectangle', reachMm: 2100 });
  expect(share).toBeGreaterThanOrEqual(0.75);
  expect(ports / portsAtLeast).toBeLessThan(1.02);
});
