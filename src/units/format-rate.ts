/** An exact rate: 23.976 is 24000 frames in 1001 seconds. */
export interface Rate {
  readonly frames: number;
  readonly seconds: number;
}

/** A frame rate as the trade writes it, with at most three decimals and a point: '23.976', '59.94', '60'. */
export function formatRate(rate: Rate): string {
  return String(Number((rate.frames / rate.seconds).toFixed(3)));
}
