import { expect, test } from 'vitest';
import { wireByHand } from '../../../../src/calc/runs/hand-changes/wire-by-hand';
import { wireZones } from '../../../../src/calc/runs/wire-zones';
import { plainSurface, plainType } from '../../zones/plain-surface';
import { plainRuns } from '../plain-runs';

const wall = plainSurface({ columns: 4, bands: [{ type: plainType(216), rows: 3 }] });
const zone = wireZones(plainRuns({ wall }))[0]!;

test('wireByHand takes what the search has of a way', () => {
  expect(wireByHand(zone, { kind: 'folded', wide: 2 })).toBe(zone.answer.ways[1]);
});

test('wireByHand wires a regular way that the search does not list', () => {
  // Rows of four: 12 panels on a port, so three rows of four go on one.
  expect(wireByHand(zone, { kind: 'rows' })).toMatchObject({ way: { kind: 'rows' }, ports: 1 });
});

test('wireByHand rests a split above the top row and an irregular wiring that was not found', () => {
  expect(wireByHand(zone, { kind: 'split', aboveRow: 3, wide: 1 })).toHaveProperty('reason');
  expect(wireByHand(zone, { kind: 'split', aboveRow: 2, wide: 1 })).not.toHaveProperty('reason');
  expect(wireByHand(zone, { kind: 'free' })).toHaveProperty('reason');
});
