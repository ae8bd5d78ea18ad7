import { expect, it } from 'vitest';
import { noBranch } from '../../../src/calc/power/branch-current';
import { legLoads } from '../../../src/calc/power/leg-loads';
import { legScheme } from '../../../src/calc/power/leg-scheme';
import { powerOf } from '../../arbitraries/power-surfaces';

it('legLoads names every leg against one limit, and the neutral against none that is stated', () => {
  const supply = { kind: 'split-phase', legToNeutralV: 120, lowestShare: 1 } as const;
  const scheme = legScheme(powerOf({ supply, connection: 'leg-to-neutral' }));
  // Split-phase: the neutral carries the difference of the legs.
  const byBranch = [
    { activeA: 12, reactiveA: 0 },
    { activeA: 5, reactiveA: 0 },
  ];
  expect(legLoads(scheme, byBranch, 63, noBranch)).toEqual([
    { leg: 'L1', currentA: 12, limitA: 63 },
    { leg: 'L2', currentA: 5, limitA: 63 },
    { leg: 'N', currentA: expect.closeTo(7, 9), limitA: null },
  ]);
});
