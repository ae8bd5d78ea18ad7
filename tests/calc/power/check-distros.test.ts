import { describe, expect, it } from 'vitest';
import { checkOf, fixedPower, powerCheck, powerChecks, powerInputs } from '../../arbitraries/power-inputs';
import { distroOf, powerPanel } from '../../arbitraries/power-surfaces';

describe('checkDistros', () => {
  it('power.distro: none chosen is an offer, one that is gone a stop; the fix clears both', () => {
    for (const [distroId, severity] of [
      [null, 'offer'],
      ['gone', 'stop'],
    ] as const) {
      const inputs = powerInputs({}, { distroId });
      const found = checkOf(powerChecks(inputs), 'power.distro')!;
      expect(found).toMatchObject({ severity, measured: null, limit: null });
      const after = powerChecks(fixedPower(inputs, found));
      expect(checkOf(after, 'power.distro')).toBeUndefined();
      expect(after.some((c) => c.severity === 'stop')).toBe(false);
    }
  });

  it('power.distro offers no distro too small for a circuit', () => {
    expect(powerCheck('power.distro', { distros: [distroOf({ legA: 10 })] }, { distroId: null })!.fix).toBeUndefined();
  });

  it('power.distro passes over a distro that one circuit is too much for', () => {
    // One panel of 8 kW at 230 V x 0.95 lowest: 8000 / 218.5 is 36.6 A, whatever the circuit's own rating.
    const inputs = powerInputs(
      {
        panels: [powerPanel('p', { fullWhiteW: 8000 })],
        distros: [distroOf({ id: 'small', legA: 32 }), distroOf({ id: 'large', legA: 63 })],
      },
      { distroId: null },
    );
    const fixed = fixedPower(inputs, checkOf(powerChecks(inputs), 'power.distro')!);
    expect(fixed.power.distroId).toBe('large');
    expect(checkOf(powerChecks(fixed), 'power.distro-leg')).toMatchObject({ severity: 'pass' });
  });

  it('power.distro-circuits and power.distro-leg state the fullest distro', () => {
    const checks = powerChecks(powerInputs());
    expect(checkOf(checks, 'power.distro-circuits')).toMatchObject({ severity: 'pass', measured: 36, limit: 48 });
    expect(checkOf(checks, 'power.distro-leg')).toMatchObject({ severity: 'pass', limit: 320 });
    expect(checkOf(checks, 'power.distro-leg')!.measured).toBeCloseTo(82.38, 2); // 54 kW / (3 x 230 x 0.95)
  });

  it('power.distro-leg stops where one circuit is more than a leg of the distro carries', () => {
    const found = powerCheck('power.distro-leg', { distros: [distroOf({ legA: 8 })] });
    expect(found).toMatchObject({ severity: 'stop', limit: 6.4 });
    expect(found!.where).toHaveLength(36);
  });
});
