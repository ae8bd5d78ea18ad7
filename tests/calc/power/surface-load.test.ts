import { describe, expect, it } from 'vitest';
import { surfaceLoad } from '../../../src/calc/power/surface-load';
import { powerPanel, surfaceOf } from '../../arbitraries/power-surfaces';

const table = surfaceOf({ columns: 3, rows: 4, rowPanel: (r) => (r === 4 ? 'q' : 'p') }); // 9 p, 3 q
const levels = { typicalLevel: 0.5, brightnessShare: 0.4 };

describe('surfaceLoad', () => {
  it('adds each type at black, typical and full white', () => {
    const panels = [powerPanel('p', { blackW: 20, fullWhiteW: 120 }), powerPanel('q', { blackW: 10, fullWhiteW: 60 })];
    expect(surfaceLoad(table, panels, levels)).toEqual({
      surfaceId: 'wall-1',
      blackW: 210, // 9 x 20 + 3 x 10
      typicalW: 420, // 9 x (20 + 0.2 x 100) + 3 x (10 + 0.2 x 50)
      fullWhiteW: 1260, // 9 x 120 + 3 x 60: brightness does not lower the size of a circuit
    });
  });

  it('counts nothing for a panel that the catalogue does not have', () => {
    expect(surfaceLoad(table, [powerPanel('q')], levels).fullWhiteW).toBe(450);
  });
});
