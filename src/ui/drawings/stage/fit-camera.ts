import type { CameraView } from './camera-views';

type Axis = readonly [number, number, number];

/** Share of the picture that the stage takes at most: paper all round it. */
const filled = 0.93;

/**
 * The nearest camera that looks against `from` (a unit vector, not upright) and has all points in its picture: what lies
 * near the camera or far from it decides by itself, no ball round all. `points`: x, y, z in metres of the scene;
 * `fovDeg`: upright angle of the lens. The target lies in the middle of the points' depth, so that one turns round it.
 */
export function fitCamera(points: Float32Array, from: Axis, fovDeg: number, ratio: number): CameraView {
  const tangent = Math.tan((fovDeg * Math.PI) / 360) * filled;
  const level = Math.hypot(from[0], from[2]);
  const right: Axis = [from[2] / level, 0, -from[0] / level];
  const up: Axis = [from[1] * right[2], from[2] * right[0] - from[0] * right[2], -from[1] * right[0]];
  const across = needOf(points, right, from, tangent * ratio);
  const upward = needOf(points, up, from, tangent);
  const away = Math.max(across.away, upward.away);
  const depth = (across.nearest + across.farthest) / 2;
  const at = (along: number): Axis =>
    mapAxis((axis) => right[axis]! * across.middle + up[axis]! * upward.middle + from[axis]! * along);
  return { position: at(away), target: at(Math.min(depth, away - 1)) };
}

/** What one side of the picture asks: how far along `from` the camera must stand, and where it must point sideways. */
function needOf(points: Float32Array, side: Axis, from: Axis, tangent: number) {
  let most = Number.NEGATIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  let nearest = Number.NEGATIVE_INFINITY;
  let farthest = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 2 < points.length; i += 3) {
    const along = points[i]! * from[0] + points[i + 1]! * from[1] + points[i + 2]! * from[2];
    const aside = points[i]! * side[0] + points[i + 1]! * side[1] + points[i + 2]! * side[2];
    most = Math.max(most, aside + tangent * along);
    least = Math.min(least, aside - tangent * along);
    nearest = Math.max(nearest, along);
    farthest = Math.min(farthest, along);
  }
  // A camera at `away` sees sideways `tangent` times its distance: |aside - middle| <= tangent (away - along) for each point.
  return { away: (most - least) / (2 * tangent), middle: (most + least) / 2, nearest, farthest };
}

function mapAxis(of: (axis: 0 | 1 | 2) => number): Axis {
  return [of(0), of(1), of(2)];
}
