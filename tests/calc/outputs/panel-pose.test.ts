import { expect, test } from 'vitest';
import { panelAxes } from '../../../src/calc/outputs/panel-axes';
import { panelPose } from '../../../src/calc/outputs/panel-pose';
import { cornerWall, smallCeiling } from './corner-stage';

const half = Math.SQRT1_2;

test('panelPose: a panel that looks along +z is not turned, and stands where the plan has it', () => {
  // A C1 R1: heading 0, its face looks to plan -y, which is +z; its middle is 1.5 m up.
  expect(panelPose(cornerWall, 0)).toEqual({ translation: [0.25, 1.5, 0], rotation: [0, 0, 0, 1] });
});

test('panelPose: round a corner to the right a wall is turned by -90 degrees about the upright', () => {
  const { translation, rotation } = panelPose(cornerWall, 2);
  expect(translation).toEqual([0.5, 1.5, 0.25]);
  [0, -half, 0, half].forEach((value, i) => {
    expect(rotation[i]).toBeCloseTo(value, 12);
  });
});

/** A vector turned by a quaternion: v + 2 w (q x v) + 2 q x (q x v). */
function turned([x, y, z, w]: readonly number[], v: readonly number[]): number[] {
  const cross = (a: readonly number[], b: readonly number[]) => [
    a[1]! * b[2]! - a[2]! * b[1]!,
    a[2]! * b[0]! - a[0]! * b[2]!,
    a[0]! * b[1]! - a[1]! * b[0]!,
  ];
  const q = [x!, y!, z!];
  const once = cross(q, v);
  const twice = cross(q, once);
  return v.map((value, i) => value + 2 * w! * once[i]! + 2 * twice[i]!);
}

test('panelPose takes right, up and out of a panel to its axes in the plan, of walls all round and of ceilings', () => {
  const tables = [...Array.from({ length: 24 }, (_, i) => i * 15 - 180)].flatMap((heading) =>
    [cornerWall, smallCeiling].map((table) => ({ ...table, headingDeg: new Float64Array(table.count).fill(heading) })),
  );
  for (const table of tables) {
    const { rotation } = panelPose(table, 0);
    expect(Math.hypot(...rotation)).toBeCloseTo(1, 12);
    const { across, up, out } = panelAxes(table, 0);
    for (const [unit, axis] of [
      [[1, 0, 0], across],
      [[0, 1, 0], up],
      [[0, 0, 1], out],
    ] as const) {
      const found = turned(rotation, unit);
      [axis[0], axis[2], -axis[1]].forEach((value, i) => {
        expect(found[i]).toBeCloseTo(value, 12);
      });
    }
  }
});
