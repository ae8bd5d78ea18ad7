import { expect, test } from 'vitest';
import { wireZones } from '../../../src/calc/runs/wire-zones';
import type { RunLimits } from '../../../src/calc/runs/wiring-grid';
import type { WiringTerms } from '../../../src/calc/runs/zone-solver';
import { plainSignal } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { pairSolver, plainRuns } from './plain-runs';

const bands = [{ type: plainType(216), rows: 3 }];

test('wireZones asks for each zone with its own limits and terms', () => {
  const asked: { limits: RunLimits; terms: WiringTerms }[] = [];
  const surfaces = setOf(
    plainSurface({ letter: 'A', columns: 4, bands }),
    plainSurface({ letter: 'B', kind: 'ceiling', columns: 4, bands }),
  );
  const given = plainRuns({ surfaces, signal: plainSignal({ reachMm: 1800, priority: 'most-free' }) });
  const zones = wireZones({
    ...given,
    solve: (grid, limits, terms) => {
      asked.push({ limits, terms });
      return pairSolver(grid, limits, terms);
    },
  });
  expect(zones.map(({ surface, zone }) => [surface, zone.letter])).toEqual([
    [0, 'A'],
    [1, 'B'],
  ]);
  expect(asked.map(({ limits }) => limits.reachMm)).toEqual([1800, Number.POSITIVE_INFINITY]);
  expect(asked[0]?.terms).toEqual({ priority: 'most-free', portsThere: 20, portsABreakout: 10 });
  expect(zones[0]?.wiring).toBe(zones[0]?.answer.chosen);
  expect(zones[0]?.byHand).toBe(false);
});
