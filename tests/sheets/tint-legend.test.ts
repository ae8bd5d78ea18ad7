import { expect, it } from 'vitest';
import { tintLegend } from '../../src/sheets/tint-legend';
import { legTints, tintPanels } from '../../src/sheets/tint-panels';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const parts = stageFixture({ columns: 8, rows: 1, jointDeg: 0, zoneColumns: 1 });

it('tintLegend names legs once each, and processors by the tint that their panels have', () => {
  expect(tintLegend(parts, 'leg')).toEqual([
    { tint: legTints.L1, text: 'L1' },
    { tint: legTints.L2, text: 'L2' },
    { tint: legTints.L3, text: 'L3' },
  ]);
  const tints = tintPanels(parts, 'processor');
  expect(tintLegend(parts, 'processor')).toEqual([...tints].map((tint, i) => ({ tint, text: `P${i + 1}` })));
});

it('tintLegend is empty where there is no tint or too much to name', () => {
  expect(tintLegend(parts, 'none')).toEqual([]);
  expect(tintLegend(parts, 'port')).toEqual([]);
  expect(tintLegend(stageFixture({ columns: 25, rows: 1, jointDeg: 0, zoneColumns: 1 }), 'processor')).toEqual([]);
});
