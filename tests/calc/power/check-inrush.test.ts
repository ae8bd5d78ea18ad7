import { describe, expect, it } from 'vitest';
import { powerCheck } from '../../arbitraries/power-inputs';
import { powerPanel } from '../../arbitraries/power-surfaces';

describe('checkInrush', () => {
  it('power.inrush: peaks of the panels of one circuit added up, no limit stated', () => {
    const found = powerCheck('power.inrush', { panels: [powerPanel('p', { inrushA: 15 })] });
    expect(found).toMatchObject({ severity: 'offer', measured: 150, limit: null });
    expect(powerCheck('power.inrush')).toBeUndefined();
  });
});
