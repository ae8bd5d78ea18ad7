import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { computeMaterials } from '../../../src/calc/materials/compute-materials';
import { workMaterials } from '../../../src/calc/materials/work-materials';
import { gearItem, materialsInputs } from '../../arbitraries/materials-inputs';

test('workMaterials prints lines that a maths library evaluates to their value', () => {
  const stock = [{ itemId: 'p', owned: 70, obtainable: null }];
  const byItem = [{ itemId: 'p', share: 0.07, least: 2 }];
  for (const inputs of [
    materialsInputs(),
    materialsInputs({ stock, materials: { spareShare: 0.03, spareLeast: 1, byItem }, nodes: [gearItem('node', null)] }),
  ]) {
    for (const step of workMaterials(inputs, computeMaterials(inputs))) {
      const value: unknown = evaluate(step.expression, { ...step.numbers });
      expect(Math.abs((value as number) - step.value), step.figure).toBeLessThanOrEqual(1e-9 * Math.abs(step.value));
    }
  }
});

test('workMaterials ends in mass and both prices', () => {
  const inputs = materialsInputs();
  const results = computeMaterials(inputs);
  const value = (figure: string) => workMaterials(inputs, results).find((step) => step.figure === figure)!.value;
  expect(value('mass')).toBe(results.massKg);
  expect(value('price, all new')).toBe(results.priceTotal);
  expect(value('price of what is to be got')).toBe(results.priceToGet);
  expect(value('spares, Panel p')).toBe(3);
});
