import { expect, test } from 'vitest';
import { computePower } from '../../../src/calc/power/compute-power';
import { worstCircuit } from '../../../src/calc/power/worst-circuit';
import { powerInputs } from '../../arbitraries/power-inputs';
import { powerPanel, surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

const surfaces = surfaceSet(
  surfaceOf({ columns: 1, rows: 10 }),
  surfaceOf({ columns: 1, rows: 3, surfaceId: 'b', rowPanel: () => 'q' }),
);
const inputs = powerInputs({
  surfaces,
  panels: [powerPanel('p', { inrushA: 2 }), powerPanel('q', { inrushA: 7 })],
});
const results = computePower(inputs);

test('worstCircuit adds a figure over the panels of each circuit: 10 x 2 against 3 x 7', () => {
  const worst = worstCircuit(inputs, results, (panel) => panel.power.inrushA ?? 0);
  expect(worst).toMatchObject({ sum: 21, circuit: { surfaceId: 'b', count: 3 } });
});

test('worstCircuit is null where nothing has any of it, or nothing stands', () => {
  expect(worstCircuit(inputs, results, () => 0)).toBeNull();
  expect(worstCircuit({ ...inputs, panels: [] }, results, () => 5)).toBeNull();
  expect(worstCircuit(inputs, { circuits: [], order: new Uint32Array(0) }, () => 5)).toBeNull();
});
