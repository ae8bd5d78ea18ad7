import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { computeMaterials } from '../../../src/calc/materials/compute-materials';
import { cableItem, gearItem, materialsInputs, purchasePanel } from '../../arbitraries/materials-inputs';

describe('computeMaterials', () => {
  it('adds mass and price of everything, worked by hand', () => {
    // Needed and spare: 103 panels; 2 processors, 3 breakouts, 2 nodes, 2 distros; cables 13, 91, 3, 2, 11 and 93; 18 cases.
    const results = computeMaterials(materialsInputs());
    expect(results.priceTotal).toBe(103 * 1000 + 2 * 20_000 + 3 * 3000 + 2 * 15_000 + 2 * 4000 + 213 * 20);
    expect(results.massKg).toBeCloseTo(103 * 8 + 9 * 5 + 213 * 0.5 + 18 * 20, 9);
    expect(results.priceToGet).toBe(results.priceTotal);
    expect(results.unpriced).toBe(0);
    expect(results.lines).toHaveLength(12);
  });

  it('prices only what is still to be got, and leaves the total as if all were bought', () => {
    const results = computeMaterials(materialsInputs({ stock: [{ itemId: 'p', owned: 100, obtainable: null }] }));
    expect(results.priceToGet).toBe(computeMaterials(materialsInputs()).priceTotal - 100_000);
    expect(results.priceTotal).toBe(computeMaterials(materialsInputs()).priceTotal);
  });

  it('leaves out lines without a price and counts them', () => {
    const inputs = materialsInputs({ processors: [gearItem('a', null)], cables: [cableItem('x', 'circuit')] });
    const results = computeMaterials(inputs);
    expect(results.unpriced).toBe(6); // the processor and five kinds of cable
    expect(results.lines.find(({ itemId }) => itemId === 'a')!.price).toBeNull();
    expect(results.priceTotal).toBe(103 * 1000 + 3 * 3000 + 2 * 15_000 + 2 * 4000 + 11 * 20);
  });

  it('has one line an item, and lines make the totals, whatever is owned and spared', () => {
    const stock = fc.array(fc.constantFrom('p', 'a', 'box', 'c-circuit'), { maxLength: 4 });
    const count = fc.integer({ min: 0, max: 200 });
    fc.assert(
      fc.property(stock, count, fc.double({ min: 0, max: 1, noNaN: true }), (ids, owned, spareShare) => {
        const results = computeMaterials(
          materialsInputs({
            stock: [...new Set(ids)].map((itemId) => ({ itemId, owned, obtainable: null })),
            materials: { spareShare, spareLeast: 0, byItem: [] },
            panels: [purchasePanel('p', { price: 999.95 })],
          }),
        );
        expect(new Set(results.lines.map(({ itemId }) => itemId)).size).toBe(results.lines.length);
        expect(results.lines.reduce((sum, line) => sum + line.massKg, 0)).toBeCloseTo(results.massKg, 6);
        expect(results.lines.reduce((sum, line) => sum + (line.price ?? 0), 0)).toBeCloseTo(results.priceToGet, 6);
        expect(results.priceToGet).toBeLessThanOrEqual(results.priceTotal + 1e-6);
        for (const line of results.lines) {
          expect(line.toGet + (line.owned ?? 0)).toBeGreaterThanOrEqual(
            line.group === 'cases' ? 0 : line.needed + line.spare,
          );
        }
      }),
    );
  });
});
