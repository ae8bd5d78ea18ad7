import { describe, expect, it } from 'vitest';
import { computeMaterials } from '../../../src/calc/materials/compute-materials';
import { checkStock } from '../../../src/calc/wish/check-stock';
import { materialsInputs } from '../../arbitraries/materials-inputs';

const { lines } = computeMaterials(materialsInputs()); // 100 panels needed, 3 spare
const of = (owned: number | null, obtainable: number | null) =>
  checkStock([{ itemId: 'p', owned, obtainable }], lines).find(({ id }) => id === 'wish.stock.p')!;

describe('checkStock', () => {
  it('stops where more is needed than is owned and can be had', () => {
    expect(of(60, 39)).toMatchObject({ severity: 'stop', measured: 100, limit: 99, where: [{ name: 'Panel p' }] });
  });

  it('watches what must still be got, and says how many', () => {
    expect(of(60, 40)).toMatchObject({
      severity: 'watch',
      limit: 100,
      values: { short: { value: 40, unit: 'count' } },
    });
  });

  it('passes what is owned, spares left to the bill', () => {
    expect(of(100, null)).toMatchObject({ severity: 'pass', limit: 100 });
    expect(of(100, 0)).toMatchObject({ severity: 'pass' });
  });

  it('watches more than is owned where nobody stated what can be had', () => {
    expect(of(60, null)).toMatchObject({ severity: 'watch', limit: 60, values: { short: { value: 40 } } });
  });

  it('never passes what nobody stated', () => {
    expect(of(null, 500)).toMatchObject({ severity: 'offer', limit: null });
    expect(of(null, null)).toMatchObject({ severity: 'offer', limit: null });
  });

  it('gathers what nobody stated in one offer, cables and cases left out', () => {
    const found = checkStock([{ itemId: 'p', owned: 1, obtainable: 1 }], lines).at(-1)!;
    expect(found).toMatchObject({ id: 'wish.stock-not-stated', severity: 'offer', measured: 4, limit: null });
    expect(found.where.map(({ name }) => name)).toEqual([
      'Item a',
      'Item box',
      'Item node',
      'Item distro',
      'wish.stock',
    ]);
  });

  it('names every figure that its sentence shows', () => {
    const checks = [of(60, 39), of(60, 40), of(100, 0), of(60, null), of(null, 5), of(null, null)];
    for (const { sentence, values, limit } of checks) {
      for (const [, name] of sentence.matchAll(/\{(\w+)\}/g)) {
        const isThere = name === 'measured' || (name === 'limit' ? limit !== null : values?.[name!] !== undefined);
        expect(isThere, sentence).toBe(true);
      }
    }
  });

  it('has unique ids', () => {
    const stock = lines.map(({ itemId }) => ({ itemId, owned: 0, obtainable: 0 }));
    const ids = checkStock(stock, lines).map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toHaveLength(11);
  });
});
