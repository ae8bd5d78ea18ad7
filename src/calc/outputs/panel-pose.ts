import type { SurfaceTable } from '../surfaces/surface-table';
import { panelAxes } from './panel-axes';

/**
 * Where a panel's face has its middle and how the panel is turned, in metres from the stage's origin with y up and right-handed:
 * plan (x, y, z) is (x, z, -y). Unturned it stands upright and its face looks along +z.
 */
export interface PanelPose {
  readonly translation: readonly [x: number, y: number, z: number];
  /** Unit quaternion, its w at least 0. */
  readonly rotation: readonly [x: number, y: number, z: number, w: number];
}

export function panelPose(table: SurfaceTable, local: number): PanelPose {
  const { across, up, out } = panelAxes(table, local);
  return {
    translation: [table.xMm[local]! / 1000, table.zMm[local]! / 1000, 0 - table.yMm[local]! / 1000],
    rotation: quaternion(yUp(across), yUp(up), yUp(out)),
  };
}

type Vector = readonly [x: number, y: number, z: number];

const yUp = ([x, y, z]: Vector): Vector => [x, z, 0 - y];

/** Of the turn that takes the axes to these; the largest of its four numbers is found first, so that none is lost in rounding. */
function quaternion([ax, ay, az]: Vector, [bx, by, bz]: Vector, [cx, cy, cz]: Vector): PanelPose['rotation'] {
  const squares = [1 + ax - by - cz, 1 - ax + by - cz, 1 - ax - by + cz, 1 + ax + by + cz];
  const largest = squares.indexOf(Math.max(...squares));
  const twice = Math.sqrt(squares[largest]!);
  const rows = [
    [twice * twice, ay + bx, az + cx, bz - cy],
    [ay + bx, twice * twice, bz + cy, cx - az],
    [az + cx, bz + cy, twice * twice, ay - bx],
    [bz - cy, cx - az, ay - bx, twice * twice],
  ];
  const length = 2 * twice * (rows[largest]![3]! < 0 ? -1 : 1);
  const [x, y, z, w] = rows[largest]!.map((value) => value / length + 0);
  return [x!, y!, z!, w!];
}
