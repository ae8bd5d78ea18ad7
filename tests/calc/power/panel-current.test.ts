import { describe, expect, it } from 'vitest';
import { panelCurrent } from '../../../src/calc/power/panel-current';
import { powerPanel } from '../../arbitraries/power-surfaces';

const circuit = { ratedA: 16, usableShare: 0.8 };

describe('panelCurrent', () => {
  it('sizes at full white and the voltage given: 18 panels of 150 W on 16 A at 230 V (common practice, no source)', () => {
    const current = panelCurrent('p', [powerPanel('p')], circuit, 230);
    expect(current).toMatchObject({ known: true, watts: 150, panels: 18, limitA: 12.8 });
    expect(current.currentA).toBeCloseTo(0.6865, 4); // 150 / (230 x 0.95)
  });

  it('keeps within the power chain where that carries less than the circuit', () => {
    const current = panelCurrent('p', [powerPanel('p', { chainA: 5 })], circuit, 230);
    expect(current).toMatchObject({ limitA: 5, panels: 7 }); // 7 x 0.6865 = 4.81
  });

  it('of a panel that the catalogue does not have draws nothing and says so', () => {
    expect(panelCurrent('x', [powerPanel('p')], circuit, 230)).toMatchObject({ known: false, currentA: 0, panels: 0 });
  });
});
