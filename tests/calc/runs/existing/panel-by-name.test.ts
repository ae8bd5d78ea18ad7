import { expect, test } from 'vitest';
import { panelByName } from '../../../../src/calc/runs/existing/panel-by-name';
import { panelAt } from '../../../../src/calc/surfaces/panel-at';
import { plainSurface, plainType, setOf } from '../../zones/plain-surface';

const bands = [{ type: plainType(216), rows: 3 }];
const isHole = (column: number, row: number) => column === 2 && row === 2;
const one = setOf(plainSurface({ letter: 'A', columns: 12, bands, isHole }));
const two = setOf(
  plainSurface({ letter: 'A', columns: 12, bands, isHole }),
  plainSurface({ letter: 'B', columns: 2, bands }),
);

test.each([[one], [two]])('panelByName reads back every name of a stage', (set) => {
  for (let panel = 0; panel < set.total; panel++) expect(panelByName(set, panelAt(set, panel)!.name)).toBe(panel);
});

test('panelByName takes the letter or not with one surface, any case and spacing', () => {
  expect(panelByName(one, 'A C12 R3')).toBe(panelByName(one, ' c12r3 '));
  expect(panelByName(two, 'b c1 r1')).toBe(one.total);
});

test.each(['C1 R1', 'C C1 R1', 'A C13 R1', 'A C1 R4', 'A C0 R1', 'A C2 R2', 'A C1', 'A C1 R1 x', ''])(
  'panelByName finds no panel %j on two surfaces',
  (name) => {
    expect(panelByName(two, name)).toBe(-1);
  },
);

test('panelByName finds nothing on a stage without surfaces', () => {
  expect(panelByName(setOf(), 'C1 R1')).toBe(-1);
});
