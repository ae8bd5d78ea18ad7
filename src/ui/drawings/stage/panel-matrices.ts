import type { SurfaceTable } from '../../../calc/surfaces/surface-table';
import { panelFrames } from './panel-frame';

/**
 * Where each panel of a surface stands in the scene, 16 numbers a panel, column by column: a unit card whose LED face is
 * its +z side at z = 0, sized, turned and moved. The scene is in metres with y up, so plan (x, y, z) becomes (x, z, -y).
 * `grow` is added on every side, in metres.
 */
export function panelMatrices(table: SurfaceTable, locals: ArrayLike<number>, grow = 0): Float32Array {
  const frameOf = panelFrames(table);
  const matrices = new Float32Array(locals.length * 16);
  for (let i = 0; i < locals.length; i++) {
    const local = locals[i]!;
    const type = table.types[table.type[local]!]!;
    const { column, row, front } = frameOf(local);
    const at = i * 16;
    write(matrices, at, column, type.widthMm / 1000 + 2 * grow);
    write(matrices, at + 4, row, type.heightMm / 1000 + 2 * grow);
    write(matrices, at + 8, front, type.depthMm / 1000 + 2 * grow);
    matrices[at + 12] = table.xMm[local]! / 1000 + front[0] * grow;
    matrices[at + 13] = table.zMm[local]! / 1000 + front[2] * grow;
    matrices[at + 14] = -table.yMm[local]! / 1000 - front[1] * grow;
    matrices[at + 15] = 1;
  }
  return matrices;
}

function write(matrices: Float32Array, at: number, plan: readonly [number, number, number], length: number): void {
  matrices[at] = plan[0] * length;
  matrices[at + 1] = plan[2] * length;
  matrices[at + 2] = -plan[1] * length;
}
