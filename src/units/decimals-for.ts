/**
 * Digits after the decimal sign for a figure of this size: `most` below 10, one fewer below 100, and so on down to none.
 * A figure that rounds up to 10 counts as 10.
 */
export function decimalsFor(value: number, most: number): number {
  let decimals = most;
  while (decimals > 0) {
    const shown = Math.round(Math.abs(value) * 10 ** decimals) / 10 ** decimals;
    if (shown < 10 ** (most + 1 - decimals)) break;
    decimals -= 1;
  }
  return decimals;
}
