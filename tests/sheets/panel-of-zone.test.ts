import { expect, test } from 'vitest';
import { panelOfZone } from '../../src/sheets/panel-of-zone';
import { zonesOf } from '../calc/nodes/plain-nodes';
import { plainSurface, plainType, setOf } from '../calc/zones/plain-surface';

const bands = [{ type: plainType(100), rows: 3 }];
const wall = plainSurface({ letter: 'A', columns: 4, bands });
/** Columns 3 and 4 lack their two lower panels and the whole of column 3. */
const holed = plainSurface({
  letter: 'B',
  columns: 4,
  bands,
  isHole: (column, row) => column === 3 || (column === 4 && row < 3),
});
const surfaces = setOf(wall, holed);

test('panelOfZone is the lower left panel, numbered through all surfaces', () => {
  // Column 3 of the wall starts behind two columns of three; the second surface behind twelve panels.
  expect(zonesOf(wall, 2).map((zone) => panelOfZone(surfaces, zone))).toEqual([0, 6]);
  expect(panelOfZone(surfaces, zonesOf(holed, 2)[0]!)).toBe(12);
});

test('panelOfZone goes on to the first place that holds a panel, and knows no zone without', () => {
  // Six panels in columns 1 and 2, none in 3, then the upper one of column 4.
  expect(panelOfZone(surfaces, zonesOf(holed, 2)[1]!)).toBe(18);
  expect(panelOfZone(surfaces, zonesOf(holed, 1)[2]!)).toBeNull();
  expect(panelOfZone(setOf(wall), zonesOf(holed, 2)[0]!)).toBeNull();
});
