import { describe, expect, it } from 'vitest';
import { checkOf, fixedPower, powerCheck, powerChecks, powerInputs } from '../../arbitraries/power-inputs';
import { powerPanel } from '../../arbitraries/power-surfaces';

describe('checkVoltage', () => {
  it('power.voltage-high: 277 V is above a sheet of 264 V, and 480 V between legs is no help', () => {
    const panels = [powerPanel('p', { highestV: 264 })];
    const supply = { kind: 'wye', legToNeutralV: 277, lowestShare: 0.95 } as const;
    const found = powerCheck('power.voltage-high', { panels }, { supply });
    expect(found).toMatchObject({ severity: 'stop', measured: 277, limit: 264 });
    expect(found!.fix).toBeUndefined();
  });

  it('power.voltage-high: 400 V between legs is put right by feeding to neutral', () => {
    const inputs = powerInputs({}, { connection: 'leg-to-leg' });
    const found = checkOf(powerChecks(inputs), 'power.voltage-high')!;
    expect(found.severity).toBe('stop');
    const after = powerChecks(fixedPower(inputs, found));
    expect(checkOf(after, 'power.voltage-high')).toMatchObject({ severity: 'pass' });
    expect(after.some((c) => c.severity === 'stop')).toBe(false);
  });

  it('power.voltage-low: the low end of the range counts, not nominal; feeding from leg to leg puts it right', () => {
    const panels = [powerPanel('p', { lowestV: 110, highestV: 240 })];
    const supply = { kind: 'wye', legToNeutralV: 120, lowestShare: 0.9 } as const;
    const inputs = powerInputs({ panels }, { supply });
    const found = checkOf(powerChecks(inputs), 'power.voltage-low')!;
    expect(found).toMatchObject({ severity: 'stop', measured: 108, limit: 110 });
    expect(checkOf(powerChecks(fixedPower(inputs, found)), 'power.voltage-low')).toMatchObject({ severity: 'pass' });
  });
});
