import { expect, test } from 'vitest';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import { plainSurface, plainType } from '../zones/plain-surface';
import { anchor, plainRuns } from './plain-runs';

const wall = plainSurface({ columns: 4, bands: [{ type: plainType(216), rows: 3 }] });

test('wireStage lays the hand changes over what the search chose', () => {
  const cut = { kind: 'cut' as const, id: 'c', from: anchor(1, 1), to: anchor(1, 2) };
  expect(wireStage(plainRuns({ wall })).zones[0]?.wiring.ports).toBe(4);
  expect(wireStage(plainRuns({ wall, handChanges: [cut] })).zones[0]?.wiring.ports).toBe(5);
});

test('wireStage names what rests', () => {
  const entry = { kind: 'entry' as const, id: 'e', at: anchor(9, 1) };
  expect(wireStage(plainRuns({ wall, handChanges: [entry] })).resting).toEqual([
    { id: 'e', reason: 'its segment has no such column' },
  ]);
});
