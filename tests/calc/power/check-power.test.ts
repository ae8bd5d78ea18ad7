import { describe, expect, it } from 'vitest';
import { powerChecks, powerInputs, servicePoint } from '../../arbitraries/power-inputs';
import { powerPanel, surfaceSet } from '../../arbitraries/power-surfaces';

describe('checkPower', () => {
  it('has unique ids, and nothing stops on a plain wall', () => {
    const checks = powerChecks(powerInputs());
    expect(new Set(checks.map((c) => c.id)).size).toBe(checks.length);
    expect(checks.filter((c) => c.severity === 'stop' || c.severity === 'watch')).toEqual([]);
  });

  it('of an empty stage says nothing of circuits and does not fail', () => {
    const checks = powerChecks(powerInputs({ surfaces: surfaceSet() }));
    expect(checks.map((c) => c.id)).toEqual(['power.service']);
  });

  it('never words a result as safe', () => {
    const words = powerChecks(
      powerInputs(
        { panels: [powerPanel('p', { inrushA: 5, leakageMa: 1 })] },
        { servicePoints: [servicePoint('a', 400)] },
      ),
    );
    expect(words.some((c) => /\bsafe/i.test(c.sentence))).toBe(false);
  });
});
