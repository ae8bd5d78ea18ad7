import { expect, test } from 'vitest';
import { homeRunSide } from '../../src/sheets/home-run-side';

const wall = { kind: 'wall' } as const;
const ceiling = { kind: 'ceiling' } as const;

test('homeRunSide of a wall is its foot, whatever the entry of ceilings', () => {
  expect(homeRunSide(wall, 'left', 'behind')).toBe('bottom');
});

test('homeRunSide of a ceiling is the edge that the plan names from below, left and right swapped from above', () => {
  const sides = (from: 'inside' | 'behind') =>
    (['left', 'right', 'top', 'bottom'] as const).map((entry) => homeRunSide(ceiling, entry, from));
  expect(sides('inside')).toEqual(['left', 'right', 'top', 'bottom']);
  expect(sides('behind')).toEqual(['right', 'left', 'top', 'bottom']);
});
