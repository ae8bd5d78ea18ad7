/** An exact ratio of two whole numbers; the denominator is above zero. */
export interface Fraction {
  readonly over: bigint;
  readonly under: bigint;
}

/** The ratio that a finite number's shortest decimal text stands for: 0.1 is exactly 1/10, so that 1 - 0.1 is exactly 9/10. */
export function fractionOf(value: number): Fraction {
  const [digits = '0', power = '0'] = String(value).split('e');
  const [whole = '0', decimals = ''] = digits.split('.');
  const over = BigInt(whole + decimals);
  const shift = Number(power) - decimals.length;
  return shift >= 0 ? { over: over * 10n ** BigInt(shift), under: 1n } : { over, under: 10n ** BigInt(-shift) };
}

export function times(a: Fraction, b: Fraction): Fraction {
  return { over: a.over * b.over, under: a.under * b.under };
}

/** a / b; b must not be zero. */
export function divided(a: Fraction, b: Fraction): Fraction {
  return b.over > 0n
    ? { over: a.over * b.under, under: a.under * b.over }
    : { over: -a.over * b.under, under: a.under * -b.over };
}

export function minus(a: Fraction, b: Fraction): Fraction {
  return { over: a.over * b.under - b.over * a.under, under: a.under * b.under };
}

/** Negative, zero or positive as a is less than, equal to or greater than b. */
export function compared(a: Fraction, b: Fraction): number {
  const difference = a.over * b.under - b.over * a.under;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** The greatest whole number not above a ratio that is not negative. */
export function wholePart(a: Fraction): number {
  return Number(a.over / a.under);
}

/** The nearest floating-point number, exact where the ratio is a whole number below 2^53. */
export function asNumber(a: Fraction): number {
  const whole = a.over / a.under;
  return Number(whole) + Number(a.over % a.under) / Number(a.under);
}
