import { describe, expect, it } from 'vitest';
import { legScheme } from '../../../src/calc/power/leg-scheme';
import { panelCurrent } from '../../../src/calc/power/panel-current';
import { planCircuits } from '../../../src/calc/power/plan-circuits';
import type { SurfaceSet } from '../../../src/calc/surfaces/surface-table';
import type { Distro } from '../../../src/plan/distro';
import { distroOf, inCircle, powerOf, powerPanel, surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

const power = powerOf();
const plan = (set: SurfaceSet, distro: Distro | null) =>
  planCircuits(
    set,
    set.surfaces.map((s) => s.types.map((t) => panelCurrent(t.panelId, [powerPanel('p')], power.circuit, 230))),
    legScheme(power),
    distro,
    power.circuit.usableShare,
  );

describe('planCircuits', () => {
  it('keeps whole columns where the distros are needed anyway: 136 columns of 13 on three of 48', () => {
    const { circuits, distroStarts } = plan(surfaceSet(surfaceOf({ columns: 136, rows: 13 })), distroOf());
    expect(circuits).toHaveLength(136);
    expect(distroStarts).toEqual([0, 46, 92]);
  });

  it('folds columns where that saves a distro: 136 columns of 10 make 76 circuits on two instead of 136 on three', () => {
    // By hand: 18 panels a circuit; 9 rows two columns wide make 68 circuits, the lowest row 18 wide makes 8.
    const { circuits, distroStarts } = plan(surfaceSet(surfaceOf({ columns: 136, rows: 10 })), distroOf());
    expect(circuits).toHaveLength(76);
    expect(distroStarts).toHaveLength(2);
  });

  it('keeps whole columns where no distro is chosen, all on one', () => {
    const { circuits, distroStarts } = plan(surfaceSet(surfaceOf({ columns: 136, rows: 10 })), null);
    expect(circuits).toHaveLength(136);
    expect(distroStarts).toEqual([0]);
  });

  it('a round ceiling needs at most a quarter more circuits than its panels ask for', () => {
    for (const across of [10, 16, 20, 24, 28, 30, 40, 60]) {
      const table = surfaceOf({ columns: across, rows: across, kind: 'ceiling', holds: inCircle(across) });
      const { circuits } = plan(surfaceSet(table), null);
      expect(circuits.length).toBeLessThanOrEqual(Math.ceil(table.count / 18) * 1.25);
    }
  });

  it('adds up watts and the lagging part of every circuit', () => {
    const [circuit] = plan(surfaceSet(surfaceOf({ columns: 1, rows: 10 })), null).circuits;
    expect(circuit!.watts).toBe(1500);
    expect(circuit!.branch.activeA).toBeCloseTo(1500 / 230, 9);
    expect(circuit!.branch.reactiveA).toBeCloseTo((1500 / 230) * Math.tan(Math.acos(0.95)), 9);
  });

  it('of an empty stage is empty', () => {
    expect(plan(surfaceSet(), distroOf())).toEqual({ circuits: [], distroStarts: [] });
  });
});
