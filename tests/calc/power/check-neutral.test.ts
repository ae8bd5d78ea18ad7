import { describe, expect, it } from 'vitest';
import { powerCheck } from '../../arbitraries/power-inputs';
import { powerPanel } from '../../arbitraries/power-surfaces';

describe('checkNeutral', () => {
  it('power.triplen-neutral: an offer up to sqrt 3 of the leg; a watch without power-factor correction; none leg to leg', () => {
    const found = powerCheck('power.triplen-neutral')!;
    expect(found).toMatchObject({ severity: 'offer', limit: null });
    expect(found.measured).toBeCloseTo(142.69, 2); // 1.73205 x 82.380
    expect(powerCheck('power.triplen-neutral', { panels: [powerPanel('p', { powerFactor: 0.65 })] })).toMatchObject({
      severity: 'watch',
    });
    const panels = [powerPanel('p', { highestV: 480 })];
    expect(powerCheck('power.triplen-neutral', { panels }, { connection: 'leg-to-leg' })).toBeUndefined();
  });
});
