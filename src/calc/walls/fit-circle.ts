import { solveThree } from './solve-three';

export interface FittedCircle {
  readonly xMm: number;
  readonly yMm: number;
  readonly radiusMm: number;
}

/** Beyond this radius a wall counts as flat. */
const LARGEST_RADIUS_MM = 1e8;
const MOST_STEPS = 400;

/**
 * Circle of least squared distances to `points` (x0 y0 x1 y1 ...): an algebraic fit to begin with, then damped
 * Gauss-Newton steps on the true distances. Points are centred and scaled first, so that place and size do not matter.
 * Null for fewer than three points, for points on a line, and beyond a radius of 100 km.
 */
export function fitCircle(points: Float64Array): FittedCircle | null {
  const count = points.length / 2;
  if (count < 3) return null;
  let meanX = 0;
  let meanY = 0;
  for (let i = 0; i < count; i++) {
    meanX += points[2 * i]! / count;
    meanY += points[2 * i + 1]! / count;
  }
  let spread = 0;
  for (let i = 0; i < count; i++) spread += (points[2 * i]! - meanX) ** 2 + (points[2 * i + 1]! - meanY) ** 2;
  const scale = Math.sqrt(spread / count);
  if (!(scale > 0)) return null;
  const unit = points.map((value, i) => (value - (i % 2 === 0 ? meanX : meanY)) / scale);
  const rough = algebraicFit(unit);
  const fitted = rough && refine(unit, rough);
  if (fitted === null) return null;
  const [x, y, radius] = fitted;
  const radiusMm = radius * scale;
  if (!(radiusMm <= LARGEST_RADIUS_MM)) return null;
  return { xMm: meanX + x * scale, yMm: meanY + y * scale, radiusMm };
}

type Circle = readonly [x: number, y: number, radius: number];

/** Least squares on x^2 + y^2 = 2 a x + 2 b y + c, points centred, so that the sums of x and of y vanish. */
function algebraicFit(points: Float64Array): Circle | null {
  const count = points.length / 2;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  let xs = 0;
  let ys = 0;
  let squares = 0;
  for (let i = 0; i < points.length; i += 2) {
    const x = points[i]!;
    const y = points[i + 1]!;
    const square = x * x + y * y;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xs += x * square;
    ys += y * square;
    squares += square;
  }
  const solved = solveThree([
    [xx, xy, 0, xs / 2],
    [xy, yy, 0, ys / 2],
    [0, 0, count, squares],
  ]);
  if (solved === null) return null;
  const [a, b, c] = solved;
  return [a, b, Math.sqrt(c + a * a + b * b)];
}

function refine(points: Float64Array, from: Circle): Circle | null {
  let circle = from;
  let cost = costOf(points, circle);
  let damping = 1e-3;
  for (let step = 0; step < MOST_STEPS && Number.isFinite(cost); step++) {
    const move = gaussNewtonMove(points, circle, damping);
    if (move === null) break;
    const next: Circle = [circle[0] + move[0], circle[1] + move[1], circle[2] + move[2]];
    const nextCost = costOf(points, next);
    if (next[2] > 0 && nextCost < cost) {
      circle = next;
      cost = nextCost;
      damping /= 10;
      if (Math.hypot(...move) < 1e-13 * circle[2]) break;
    } else {
      damping *= 10;
      if (damping > 1e6) break;
    }
  }
  return circle.every(Number.isFinite) ? circle : null;
}

function costOf(points: Float64Array, [x, y, radius]: Circle): number {
  let cost = 0;
  for (let i = 0; i < points.length; i += 2) {
    const off = Math.sqrt((points[i]! - x) ** 2 + (points[i + 1]! - y) ** 2) - radius;
    cost += off * off;
  }
  return cost;
}

function gaussNewtonMove(points: Float64Array, [x, y, radius]: Circle, damping: number): Circle | null {
  const count = points.length / 2;
  let uu = 0;
  let uv = 0;
  let vv = 0;
  let u1 = 0;
  let v1 = 0;
  let ur = 0;
  let vr = 0;
  let r1 = 0;
  for (let i = 0; i < points.length; i += 2) {
    const dx = points[i]! - x;
    const dy = points[i + 1]! - y;
    const far = Math.sqrt(dx * dx + dy * dy);
    if (far === 0) continue;
    const u = dx / far;
    const v = dy / far;
    const off = far - radius;
    uu += u * u;
    uv += u * v;
    vv += v * v;
    u1 += u;
    v1 += v;
    ur += u * off;
    vr += v * off;
    r1 += off;
  }
  const more = 1 + damping;
  return solveThree([
    [uu * more, uv, u1, ur],
    [uv, vv * more, v1, vr],
    [u1, v1, count * more, r1],
  ]);
}
