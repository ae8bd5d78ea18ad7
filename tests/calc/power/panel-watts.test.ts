import { describe, expect, it } from 'vitest';
import { panelWatts } from '../../../src/calc/power/panel-watts';
import { powerPanel } from '../../arbitraries/power-surfaces';

describe('panelWatts', () => {
  const panel = powerPanel('p', { blackW: 30, fullWhiteW: 150 });

  it('is black at level 0 and full white at level 1 and full brightness', () => {
    expect(panelWatts(panel, 0, 1)).toBe(30);
    expect(panelWatts(panel, 1, 1)).toBe(150);
  });

  it('dims only what is above black: half level at half brightness adds a quarter', () => {
    expect(panelWatts(panel, 0.5, 0.5)).toBe(60); // 30 + 0.25 x 120
  });
});
