import { expect, test } from 'vitest';
import { computeMaterials } from '../../../src/calc/materials/compute-materials';
import { checkBudget } from '../../../src/calc/wish/check-budget';
import { gearItem, materialsInputs, noNetwork } from '../../arbitraries/materials-inputs';
import { surfaceSet } from '../../arbitraries/power-surfaces';

const bill = computeMaterials(materialsInputs()); // 194 260 to be got
const check = (budget: number | null, materials = bill) => checkBudget(budget, materials)[0]!;

test('checkBudget: not stated is an offer; to the last coin it passes; one more stops', () => {
  expect(bill.priceToGet).toBe(194_260);
  expect(check(null)).toMatchObject({ id: 'wish.budget', severity: 'offer', measured: 194_260, limit: null });
  expect(check(194_260)).toMatchObject({ severity: 'pass' });
  expect(check(194_259)).toMatchObject({ severity: 'stop', limit: 194_259 });
});

test('checkBudget passes nothing while lines have no price, and says at least', () => {
  const unpriced = computeMaterials(materialsInputs({ nodes: [gearItem('node', null)] }));
  const found = check(1e9, unpriced);
  expect(found).toMatchObject({ severity: 'watch', values: { unpriced: { value: 1 } } });
  expect(found.sentence).toContain('at least');
  expect(check(1, unpriced).severity).toBe('stop');
});

test('checkBudget of an empty bill says nothing', () => {
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
  const empty = computeMaterials(materialsInputs({ surfaces: surfaceSet(), wiring: nothing, gear, distroCounts: [] }));
  expect(checkBudget(100, empty)).toEqual([]);
});
