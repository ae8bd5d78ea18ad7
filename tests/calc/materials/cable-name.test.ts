import { expect, test } from 'vitest';
import { cableName, cableOfKind } from '../../../src/calc/materials/cable-name';
import { cableItem } from '../../arbitraries/materials-inputs';

const cables = [cableItem('long', 'circuit', 90), cableItem('short', 'circuit', 50)];

test('cableOfKind takes the first of a kind, and none of another', () => {
  expect(cableOfKind(cables, 'circuit')?.id).toBe('long');
  expect(cableOfKind(cables, 'trunk')).toBeUndefined();
});

test('cableName is that of the catalogue, else says the kind', () => {
  expect(cableName(cables, 'circuit')).toBe(cables[0]!.name);
  expect(cableName(cables, 'home-run')).toBe('Home run');
});
