import { describe, expect, it } from 'vitest';
import { powerCheck } from '../../arbitraries/power-inputs';
import { powerPanel } from '../../arbitraries/power-surfaces';

describe('checkInrush', () => {
  it('power.inrush: peaks of the panels of one circuit added up, no limit stated', () => {
    const found = powerCheck('power.inrush', { panels: [powerPanel('p', { inrushA: 15 })] });
    expect(found).toMatchObject({ severity: 'offer', measured: 150, limit: null });
  });

  it('power.inrush: not stated on a sheet is said, never passed', () => {
    const panels = [powerPanel('p'), powerPanel('elsewhere')];
    expect(powerCheck('power.inrush', { panels })).toMatchObject({
      severity: 'offer',
      measured: null,
      where: [{ name: 'Panel p' }],
    });
  });

  it('power.inrush: says nothing of panels that draw no peak', () => {
    expect(powerCheck('power.inrush', { panels: [powerPanel('p', { inrushA: 0 })] })).toBeUndefined();
  });
});
