/** Least whole number not below amount / by, for whole amounts below 2^53: the quotient's rounding is put right. */
export function ceilDivide(amount: number, by: number): number {
  const quotient = Math.ceil(amount / by);
  if ((quotient - 1) * by >= amount) return quotient - 1;
  return quotient * by >= amount ? quotient : quotient + 1;
}
