/**
 * Exact sign of u^2 + v^2 - radius^2 for whole numbers up to 2^53: 1 outside the circle, 0 on it, -1 inside. Floating
 * point decides unless its rounding could change the sign.
 */
export function circleSide(u: number, v: number, radius: number): -1 | 0 | 1 {
  const away = u * u + v * v;
  const square = radius * radius;
  const difference = away - square;
  if (Math.abs(difference) > 4 * Number.EPSILON * (away + square)) return difference > 0 ? 1 : -1;
  const exact = BigInt(u) ** 2n + BigInt(v) ** 2n - BigInt(radius) ** 2n;
  return exact > 0n ? 1 : exact < 0n ? -1 : 0;
}
