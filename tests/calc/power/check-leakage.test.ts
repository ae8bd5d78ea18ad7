import { describe, expect, it } from 'vitest';
import { panelsBehindDevice } from '../../../src/calc/power/check-leakage';
import { powerCheck } from '../../arbitraries/power-inputs';
import { powerPanel, surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

describe('checkLeakage', () => {
  it('power.leakage: 1 mA a panel lets 9 behind 30 mA (IEC 60364-5-53, from memory); more never marks the chapter', () => {
    const leaking = (leakageMa: number) => powerCheck('power.leakage', { panels: [powerPanel('p', { leakageMa })] });
    expect(leaking(1)).toMatchObject({ severity: 'offer', measured: 10, limit: 9 });
    expect(leaking(0.9)).toMatchObject({ severity: 'pass', measured: 10, limit: 10 });
    expect(leaking(0)).toBeUndefined();
    expect(powerCheck('power.leakage')).toMatchObject({ severity: 'offer', measured: null, limit: null });
  });
});

it('power.leakage looks at the circuit that leaks most, not at the longest', () => {
  // A wall of 12 panels a column at 0.1 mA, a ceiling of 4 a column at 3 mA: 12 mA against 9 mA, 3 such panels.
  const surfaces = surfaceSet(
    surfaceOf({ columns: 2, rows: 12 }),
    surfaceOf({ columns: 1, rows: 4, surfaceId: 'ceiling', kind: 'ceiling', rowPanel: () => 'q' }),
  );
  const panels = [powerPanel('p', { leakageMa: 0.1 }), powerPanel('q', { leakageMa: 3 })];
  const found = powerCheck('power.leakage', { surfaces, panels });
  expect(found).toMatchObject({ severity: 'offer', measured: 4, limit: 3 });
});

describe('panelsBehindDevice', () => {
  it('takes 0.3 of 30 mA: 18 panels of 0.5 mA, 3 of 3 mA, none of 10 mA', () => {
    expect([0.5, 3, 10].map(panelsBehindDevice)).toEqual([18, 3, 0]);
  });
});

it('panelsBehindDevice stays a number for panels that leak next to nothing', () => {
  expect(panelsBehindDevice(5e-324)).toBe(1e6);
  expect(panelsBehindDevice(0)).toBe(1e6);
});
