import { expect, test } from 'vitest';
import { caseLines } from '../../../src/calc/materials/case-lines';
import { computeMaterials } from '../../../src/calc/materials/compute-materials';
import { materialsInputs, purchasePanel } from '../../arbitraries/materials-inputs';

const panelLine = (stock: { owned: number | null }) =>
  computeMaterials(materialsInputs({ stock: [{ itemId: 'p', obtainable: null, ...stock }] })).lines[0]!;

test('caseLines: 100 panels and 3 spares travel in 18 cases of 6, 20 kg each, priced with the panels', () => {
  const [cases] = caseLines([panelLine({ owned: null })], [purchasePanel('p')]);
  expect(cases).toMatchObject({
    itemId: 'p/case',
    group: 'cases',
    needed: 18,
    spare: 0,
    toGet: 18,
    massKg: 360,
    price: 0,
    leadDays: 45,
  });
});

test('caseLines: cases come with the panels that are still to be got', () => {
  expect(caseLines([panelLine({ owned: 90 })], [purchasePanel('p')])[0]).toMatchObject({ needed: 18, toGet: 3 });
});

test('caseLines of a panel that the catalogue does not have is none', () => {
  expect(caseLines([panelLine({ owned: null })], [])).toEqual([]);
});
