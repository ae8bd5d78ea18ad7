/** Of whole numbers from 0 on; that of a number and 0 is the number. Source: Euclid, Elements VII 2. */
export function greatestCommonDivisor(a: number, b: number): number {
  let x = a;
  let y = b;
  while (y > 0) [x, y] = [y, x % y];
  return x;
}
