export interface StepRange {
  readonly step: number;
  readonly least: number;
  readonly most: number;
}

/**
 * The next whole multiple of the step above or below a number, kept within its range. Ten steps at once leap from where
 * the number is. Free of rounding noise: 0.1 three times up is 0.3.
 */
export function stepNumber(
  value: number,
  direction: 1 | -1,
  tenfold: boolean,
  { step, least, most }: StepRange,
): number {
  const steps = value / step;
  const near = Math.round(steps);
  const onStep = Math.abs(steps - near) < 1e-9;
  const from = onStep ? near : direction > 0 ? Math.floor(steps) : Math.ceil(steps);
  const moved = (from + direction * (tenfold ? 10 : 1)) * step;
  const plain = Number(moved.toPrecision(12));
  return Math.min(most, Math.max(least, plain));
}
