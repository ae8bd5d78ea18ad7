import { expect, test } from 'vitest';
import { type PanelAxes, panelAxes } from '../../../src/calc/outputs/panel-axes';
import { cornerWall, smallCeiling } from './corner-stage';

const rounded = (axes: PanelAxes) =>
  Object.fromEntries(
    Object.entries(axes).map(([name, axis]) => [name, axis.map((one: number) => Math.round(one * 1e9) / 1e9 + 0)]),
  );

test('panelAxes of a wall: along the walk, upwards, and out to the right of the walk', () => {
  expect(rounded(panelAxes(cornerWall, 0))).toEqual({ across: [1, 0, 0], up: [0, 0, 1], out: [0, -1, 0] });
  // Turned right by 90 degrees: the walk goes along -y, the face looks to -x.
  expect(rounded(panelAxes(cornerWall, 2))).toEqual({ across: [0, -1, 0], up: [0, 0, 1], out: [-1, 0, 0] });
});

test('panelAxes of a ceiling seen from below with +y up: right is -x, and it looks down', () => {
  expect(rounded(panelAxes(smallCeiling, 0))).toEqual({ across: [-1, 0, 0], up: [0, 1, 0], out: [0, 0, -1] });
});
