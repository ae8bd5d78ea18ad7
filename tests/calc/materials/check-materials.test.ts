import { describe, expect, it } from 'vitest';
import { checkMaterials } from '../../../src/calc/materials/check-materials';
import { computeMaterials, type MaterialsInputs } from '../../../src/calc/materials/compute-materials';
import { gearItem, materialsInputs, noNetwork, purchasePanel } from '../../arbitraries/materials-inputs';
import { surfaceSet } from '../../arbitraries/power-surfaces';

const check = (changes: Partial<MaterialsInputs> = {}) => {
  const inputs = materialsInputs(changes);
  return checkMaterials(inputs, computeMaterials(inputs));
};
const one = (id: string, changes: Partial<MaterialsInputs> = {}) => check(changes).find((c) => c.id === id);

describe('checkMaterials', () => {
  it('materials.prices passes with every price, watches and names the lines without', () => {
    expect(one('materials.prices')).toMatchObject({ severity: 'pass', measured: 0 });
    expect(one('materials.prices', { nodes: [gearItem('node', null)] })).toMatchObject({
      severity: 'watch',
      measured: 1,
      where: [{ kind: 'item', name: 'Item node' }],
    });
  });

  it('materials.prices and materials.catalogue: of sync and network nobody can state a price, so they are an offer', () => {
    const network = { devices: 4, references: 1, splitters: 1, syncCables: 5, switches: 1, networkCables: 4 };
    const wiring = { ...materialsInputs().wiring, network };
    expect(one('materials.prices', { wiring })).toMatchObject({ severity: 'pass', measured: 0 });
    expect(one('materials.catalogue', { wiring })).toMatchObject({ severity: 'offer', measured: 5 });
  });

  it('materials.catalogue: an id that leads nowhere is a watch, a cable that nobody listed an offer', () => {
    expect(one('materials.catalogue')).toBeUndefined();
    expect(one('materials.catalogue', { processors: [] })).toMatchObject({ severity: 'watch', measured: 1 });
    expect(one('materials.catalogue', { cables: [] })).toMatchObject({ severity: 'offer', measured: 6 });
    const gear = { ...materialsInputs().gear, nodes: [{ itemId: null, count: 1 }] };
    expect(one('materials.catalogue', { gear, nodes: [] })).toMatchObject({ severity: 'offer', measured: 1 });
  });

  it('materials.spares: enough for the plan, not for its spares, is a watch on the worst', () => {
    const stock = (owned: number, obtainable: number | null) => [
      { itemId: 'p', owned, obtainable },
      { itemId: 'box', owned: 2, obtainable: 0 },
    ];
    const found = one('materials.spares', { stock: stock(90, 11) });
    expect(found).toMatchObject({ severity: 'watch', measured: 103, limit: 101 });
    expect(found!.where.map(({ name }) => name)).toEqual(['Panel p', 'Item box']);
    expect(one('materials.spares', { stock: stock(90, 13) })).toMatchObject({ measured: 3, limit: 2 });
    expect(one('materials.spares', { stock: [{ itemId: 'p', owned: 90, obtainable: 13 }] })).toBeUndefined();
    expect(one('materials.spares', { stock: [{ itemId: 'p', owned: 90, obtainable: 9 }] })).toBeUndefined(); // the wish's
    expect(one('materials.spares', { stock: [{ itemId: 'p', owned: 90, obtainable: null }] })).toBeUndefined();
  });

  it('materials.lead-time: the longest of what is still to be got', () => {
    expect(one('materials.lead-time')).toMatchObject({ severity: 'offer', measured: 45, limit: null, unit: 'days' });
    const stock = [{ itemId: 'p', owned: 200, obtainable: null }];
    const found = one('materials.lead-time', { stock });
    expect(found!.measured).toBe(10);
    expect(found!.where).toHaveLength(4);
  });

  it('materials.lead-time says nothing where no time is stated', () => {
    const unstated = (id: string) => [gearItem(id, 1, null)];
    const panels = [purchasePanel('p', { leadDays: null })];
    const changes = {
      panels,
      processors: unstated('a'),
      breakouts: unstated('box'),
      nodes: unstated('node'),
      distros: [],
    };
    expect(one('materials.lead-time', changes)).toBeUndefined();
  });

  it('of an empty bill says nothing', () => {
    const nothing = {
      runs: 0,
      returns: 0,
      panelsOnRuns: 0,
      circuits: 0,
      panelsOnCircuits: 0,
      breakouts: 0,
      video: 0,
      network: noNetwork,
    };
    const gear = { processors: [], breakouts: [], nodes: [] };
    expect(check({ surfaces: surfaceSet(), wiring: nothing, gear, distroCounts: [] })).toEqual([]);
  });
});
