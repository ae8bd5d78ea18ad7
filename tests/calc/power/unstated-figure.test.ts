import { expect, test } from 'vitest';
import { unstatedFigure } from '../../../src/calc/power/unstated-figure';
import { powerPanel } from '../../arbitraries/power-surfaces';

test('unstatedFigure offers, measures nothing and names the panels, fifty at most', () => {
  const panels = Array.from({ length: 60 }, (_, i) => powerPanel(`p${i}`));
  const found = unstatedFigure({ id: 'power.some', chapter: 'power', unit: 'A' }, panels, 'Not stated.');
  expect(found).toMatchObject({ id: 'power.some', severity: 'offer', measured: null, limit: null, unit: 'A' });
  expect(found.where).toHaveLength(50);
  expect(found.where[0]).toEqual({ kind: 'item', name: 'Panel p0' });
});
