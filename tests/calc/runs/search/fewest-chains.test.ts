import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fewestChains } from '../../../../src/calc/runs/search/fewest-chains';
import { PathCover } from '../../../../src/calc/runs/search/path-cover';
import { leastByTrying } from './least-by-trying';
import { wholeZone } from './small-zones';

test('fewestChains finds what trying all finds, and proves it', () => {
  fc.assert(
    fc.property(wholeZone, ({ grid, limits, region }) => {
      const singles = {
        order: Int32Array.from(Array(region.size).keys()),
        start: Int32Array.from(Array(region.size + 1).keys()),
      };
      const { chains, count, high, least } = fewestChains(region, [singles], { steps: 1_000_000, enough: 0 });
      const best = leastByTrying(grid, limits);
      expect({ high, ports: count }).toEqual(best);
      expect(least).toBeLessThanOrEqual(best.ports);
      expect(new PathCover(region, chains)).toMatchObject({ chains: count, overloaded: 0, high });
    }),
    { numRuns: 25 },
  );
});
