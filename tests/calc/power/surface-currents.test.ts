import { expect, test } from 'vitest';
import { surfaceCurrents } from '../../../src/calc/power/surface-currents';
import { powerOf, powerPanel, surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

test('surfaceCurrents gives each type of each surface what it draws at the lowest voltage', () => {
  const surfaces = surfaceSet(
    surfaceOf({ columns: 1, rows: 2, rowPanel: (r) => (r === 1 ? 'p' : 'gone') }),
    surfaceOf({ columns: 1, rows: 1 }),
  );
  const power = powerOf({ supply: { kind: 'wye', legToNeutralV: 250, lowestShare: 0.8 } });
  const [first, second] = surfaceCurrents({ power, panels: [powerPanel('p', { powerFactor: 1 })], surfaces });
  expect(first!.map(({ panelId, known, currentA }) => [panelId, known, currentA])).toEqual([
    ['p', true, 0.75], // 150 W / 200 V
    ['gone', false, 0],
  ]);
  expect(second).toEqual([first![0]]);
});
