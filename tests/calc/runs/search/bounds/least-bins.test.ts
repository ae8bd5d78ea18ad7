import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leastBins } from '../../../../../src/calc/runs/search/bounds/least-bins';

/** Fewest bins by trying every bin for every size. */
function byTrying(sizes: readonly number[], capacity: number): number {
  let best = sizes.length;
  const place = (i: number, bins: readonly number[]) => {
    if (bins.length >= best) return;
    if (i === sizes.length) {
      best = bins.length;
      return;
    }
    bins.forEach((load, bin) => {
      if (load + sizes[i]! <= capacity) place(i + 1, bins.with(bin, load + sizes[i]!));
    });
    place(i + 1, [...bins, sizes[i]!]);
  };
  place(0, []);
  return best;
}

test('leastBins of one size is what whole panels come to', () => {
  // Three of 4 fit into 14: seven need three bins, though 28 is twice 14.
  expect(leastBins(Array(7).fill(4), 14)).toBe(3);
});

test('leastBins sees that two of more than half share no bin', () => {
  // 6 + 6 is above 10, and 6 + 6 + 3 is 15: two by the sum. 6 + 6 + 6 + 1 is 19: two by the sum, three in fact.
  expect(leastBins([6, 6, 6, 1], 10)).toBe(3);
});

test('leastBins is never above the fewest that trying all finds', () => {
  const sizes = fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(sizes, fc.integer({ min: 20, max: 45 }), (each, capacity) => {
      expect(leastBins(each, capacity)).toBeLessThanOrEqual(byTrying(each, capacity));
    }),
  );
});
