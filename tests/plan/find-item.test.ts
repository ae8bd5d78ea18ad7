import { expect, test } from 'vitest';
import { findItem } from '../../src/plan/find-item';
import { samplePlan } from './sample-plan';

test('findItem finds an item in whichever list it stands', () => {
  const { catalogue } = samplePlan('horseshoe');
  expect(findItem(catalogue, 'rush-39')).toEqual({ list: 'panels', place: 4, item: catalogue.panels[4] });
  expect(findItem(catalogue, 'sedge-19')).toMatchObject({ list: 'panels', place: 0 });
  expect(findItem(catalogue, 'trunk-50')).toMatchObject({ list: 'cables', item: { kind: 'trunk' } });
});

test('findItem finds nothing for an id that is not there', () => {
  const { catalogue } = samplePlan('horseshoe');
  expect(findItem(catalogue, 'gone')).toBeUndefined();
  expect(findItem(catalogue, 'panels')).toBeUndefined();
});
