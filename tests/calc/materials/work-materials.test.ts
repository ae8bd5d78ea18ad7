import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { computeMaterials } from '../../../src/calc/materials/compute-materials';
import { workMaterials } from '../../../src/calc/materials/work-materials';
import { gearItem, materialsInputs, noNetwork } from '../../arbitraries/materials-inputs';

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

test('workMaterials counts jumpers as panels less chains, and cases as full ones and the last', () => {
  // 100 panels on 12 runs and 10 circuits; with 3 spares 103 panels, 6 to a case: 17 full ones and one of a single panel.
  const inputs = materialsInputs();
  const steps = workMaterials(inputs, computeMaterials(inputs));
  const needed = (name: string) => steps.find((step) => step.figure === `needed, ${name}`);
  expect(needed('Cable c-data-jumper')).toMatchObject({ value: 88, numbers: { panels: 100, runs: 12 } });
  expect(needed('Cable c-power-jumper')).toMatchObject({ value: 90, numbers: { panels: 100, circuits: 10 } });
  expect(needed('Case, Panel p')).toMatchObject({ value: 18, numbers: { panels: 100, spare: 3, each: 6 } });
});

test('workMaterials leaves out the jumpers of a plan that needs none', () => {
  const wiring = {
    runs: 100,
    returns: 0,
    panelsOnRuns: 100,
    circuits: 100,
    panelsOnCircuits: 100,
    breakouts: 2,
    video: 1,
    network: noNetwork,
  };
  const inputs = materialsInputs({ wiring });
  const figures = workMaterials(inputs, computeMaterials(inputs)).map((step) => step.figure);
  expect(figures.filter((figure) => figure.includes('jumper'))).toEqual([]);
});
