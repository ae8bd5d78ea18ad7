import { expect, test } from 'vitest';
import type { Chapter } from '../../../src/calc/chapter';
import { holdNames } from '../../../src/calc/names/hold-names';
import type { ZonesResults } from '../../../src/calc/zones/zone-result';
import { anchor, plainRuns } from '../runs/plain-runs';

const ground = plainRuns();
const zones: Chapter<ZonesResults> = { results: ground.zones, checks: [], working: [] };
const names = { processors: [{ number: 4, at: anchor(1, 1) }], ports: [], circuits: [] };

test('holdNames leaves the zones as they are where nothing is held', () => {
  const { locate, number } = holdNames();
  expect(locate(null, ground)).toBeNull();
  expect(number(zones, null, ground.surfaces)).toBe(zones);
});

test('holdNames gives the zones their held numbers, and the same answer to the same question', () => {
  const { locate, number } = holdNames();
  const held = locate(names, ground);
  expect(locate(names, { ...ground })).toBe(held);
  const numbered = number(zones, held, ground.surfaces);
  expect(numbered.results.zones.map(({ processor }) => processor)).toEqual([4]);
  expect(number(zones, held, ground.surfaces)).toBe(numbered);
});
