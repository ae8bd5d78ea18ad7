import { expect, test } from 'vitest';
import { usedPanels } from '../../../src/calc/power/used-panels';
import { powerPanel, surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

test('usedPanels keeps the catalogue order and leaves out what stands nowhere', () => {
  const panels = ['x', 'q', 'p'].map((id) => powerPanel(id));
  const surfaces = surfaceSet(surfaceOf({ columns: 1, rows: 2, rowPanel: (r) => (r === 1 ? 'p' : 'q') }));
  expect(usedPanels({ panels, surfaces }).map((panel) => panel.id)).toEqual(['q', 'p']);
});
