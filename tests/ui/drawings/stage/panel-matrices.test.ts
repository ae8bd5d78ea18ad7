import { Matrix4, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { panelMatrices } from '../../../../src/ui/drawings/stage/panel-matrices';
import { stageFixture } from '../../../arbitraries/evaluation-fixture';

const parts = stageFixture({ columns: 136, rows: 3, jointDeg: 2.5, ceilingDiameterMm: 2000 });
const wall = parts.walls[0]!;
const [table, ceiling] = [parts.surfaces.surfaces[0]!, parts.surfaces.surfaces[1]!];

/** A point of the unit card, whose face is at z = 0, as plan millimetres: x, y, height. */
function planPoint(matrices: Float32Array, i: number, point: readonly [number, number, number]): number[] {
  const { x, y, z } = new Vector3(...point).applyMatrix4(new Matrix4().fromArray(matrices, i * 16));
  return [x * 1000, -z * 1000, y * 1000];
}

describe('panelMatrices', () => {
  it('puts the corners of each card where calc has the corners of its column, front and back', () => {
    const matrices = panelMatrices(
      table,
      Array.from({ length: table.count }, (_, i) => i),
    );
    for (const column of [1, 40, 136]) {
      const i = (column - 1) * 3;
      const front = [...wall.frontMm.subarray((i / 3) * 4, (i / 3) * 4 + 4)];
      const back = [...wall.backMm.subarray((i / 3) * 4, (i / 3) * 4 + 4)];
      const corners = [
        [planPoint(matrices, i, [-0.5, -0.5, 0]), [front[0], front[1], 0]],
        [planPoint(matrices, i, [0.5, -0.5, 0]), [front[2], front[3], 0]],
        [planPoint(matrices, i, [-0.5, 0.5, -1]), [back[0], back[1], 500]],
        [planPoint(matrices, i, [0.5, 0.5, -1]), [back[2], back[3], 500]],
      ] as const;
      for (const [made, expected] of corners) {
        for (const axis of [0, 1, 2]) expect(made[axis]).toBeCloseTo(expected[axis]!, 1);
      }
    }
  });
  it('never turns a card inside out', () => {
    for (const surface of [table, ceiling]) {
      const matrices = panelMatrices(surface, [0, 1]);
      expect(new Matrix4().fromArray(matrices, 0).determinant()).toBeGreaterThan(0);
    }
  });
  it('lets the face of a ceiling look down, its depth upwards', () => {
    const matrices = panelMatrices(ceiling, [0]);
    expect(planPoint(matrices, 0, [0, 0, 0])[2]).toBeCloseTo(6200, 2);
    expect(planPoint(matrices, 0, [0, 0, -1])[2]).toBeCloseTo(6290, 2);
  });
  it('takes only the panels that are asked for, grown on every side', () => {
    const matrices = panelMatrices(table, [5], 0.01);
    expect(matrices).toHaveLength(16);
    const [left, right] = [planPoint(matrices, 0, [-0.5, 0, 0]), planPoint(matrices, 0, [0.5, 0, 0])];
    expect(Math.hypot(left[0]! - right[0]!, left[1]! - right[1]!)).toBeCloseTo(520, 2);
    const depth = [planPoint(matrices, 0, [0, 0, 0]), planPoint(matrices, 0, [0, 0, -1])];
    expect(Math.hypot(depth[0]![0]! - depth[1]![0]!, depth[0]![1]! - depth[1]![1]!)).toBeCloseTo(110, 2);
    // The face stands 10 mm before the panel's own.
    expect(Math.hypot(depth[0]![0]!, depth[0]![1]!)).toBeCloseTo(Math.hypot(table.xMm[5]!, table.yMm[5]!) - 10, 1);
  });
});
