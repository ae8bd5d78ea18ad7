import { describe, expect, it } from 'vitest';
import { checkOf, powerCheck, powerChecks, powerInputs } from '../../arbitraries/power-inputs';
import { powerPanel, surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

describe('checkCircuits', () => {
  it('power.circuit states the fullest circuit against 0.8 of 16 A (NEC 210.20(A))', () => {
    // By hand: 10 panels of 0.6865 A.
    const found = powerCheck('power.circuit');
    expect(found).toMatchObject({ severity: 'pass', limit: 12.8, unit: 'A' });
    expect(found!.measured).toBeCloseTo(6.865, 3);
    const uneven = surfaceSet(surfaceOf({ columns: 3, rows: 10, holds: (c, r) => c === 3 || r > 1 }));
    expect(
      powerCheck('power.circuit', { surfaces: uneven }, { circuit: { ratedA: 9, usableShare: 0.8 } }),
    ).toMatchObject({
      measured: expect.closeTo(6.865, 3), // two columns of 9, one of 10
      where: [{ kind: 'circuit', name: 'circuit D1-3' }],
    });
  });

  it('power.circuit stops where one panel alone is too much, and names it', () => {
    const found = powerCheck('power.circuit', { panels: [powerPanel('p', { fullWhiteW: 3000 })] });
    expect(found).toMatchObject({ severity: 'stop', limit: 12.8, where: [{ kind: 'item', name: 'Panel p' }] });
    expect(found!.measured).toBeCloseTo(3000 / 230 / 0.95, 9);
  });

  it('power.circuit measures a panel against its own power chain where that carries less', () => {
    const panels = [powerPanel('p', { chainA: 0.5 })];
    expect(powerCheck('power.circuit', { panels })).toMatchObject({ severity: 'stop', limit: 0.5 });
  });

  it('power.circuit holds the fullest circuit against the power chain of its panels where that carries less', () => {
    // By hand: ten panels of 0.6865 A on a chain of 7 A; the circuit itself would carry 12.8 A.
    const panels = [powerPanel('p', { chainA: 7 })];
    const found = powerCheck('power.circuit', { panels });
    expect(found).toMatchObject({ severity: 'pass', measured: expect.closeTo(6.865, 3), limit: 7 });
  });

  it('power.circuit names the circuit that is fullest by what it carries, not the one with most amperes', () => {
    // Rows 1 to 10 of p: 6.865 A of 12.8 A. The other wall of q on chains of 5 A: seven panels, 4.81 A of 5 A.
    const panels = [powerPanel('p'), powerPanel('q', { chainA: 5 })];
    const other = surfaceOf({ columns: 3, rows: 7, surfaceId: 'b', letter: 'B', rowPanel: () => 'q' });
    const surfaces = surfaceSet(surfaceOf({ columns: 3, rows: 10 }), other);
    const found = powerCheck('power.circuit', { panels, surfaces });
    expect(found).toMatchObject({ severity: 'pass', measured: expect.closeTo(4.8055, 3), limit: 5 });
  });

  it('power.panel-unknown stops and says no leg figure', () => {
    const checks = powerChecks(powerInputs({ panels: [] }));
    expect(checkOf(checks, 'power.panel-unknown')).toMatchObject({ severity: 'stop', measured: null });
    expect(checkOf(checks, 'power.service')).toBeUndefined();
    expect(checkOf(checks, 'power.balance')).toBeUndefined();
  });

  it('power.usable-share offers the NEC share only where the plan takes more', () => {
    const circuit = { ratedA: 16, usableShare: 1 };
    expect(powerCheck('power.usable-share', {}, { circuit })).toMatchObject({
      severity: 'offer',
      measured: 1,
      limit: 0.8,
    });
    expect(powerCheck('power.usable-share')).toBeUndefined();
  });
});
