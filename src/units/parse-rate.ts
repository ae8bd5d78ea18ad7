import type { Rate } from './format-rate';

/** Rates that exist 1000/1001 slower too. Source: the pairs of ITU-R BT.709-6 and BT.2020-2 (from memory), and their multiples. */
const nominalRates = [24, 30, 48, 60, 72, 90, 96, 120, 144, 180, 192, 240];

const refused = { refused: 'A frame rate is a number such as 24, 23.976 or 60000/1001.' } as const;

/**
 * A typed frame rate as an exact fraction in lowest terms. What reads as n x 1000/1001 cut to its decimals (two or more)
 * becomes that fraction: '23.976' and '23.98' are 24000/1001. '60000/1001', and a unit behind ('fps', 'Hz'), are understood.
 */
export function parseRate(text: string): { readonly rate: Rate } | { readonly refused: string } {
  const plain = text.trim().replace(/\s*(fps|hz)$/i, '');
  const fraction = /^(\d{1,7})\s*\/\s*(\d{1,5})$/.exec(plain);
  if (fraction !== null) return lowestTerms(Number(fraction[1]), Number(fraction[2]));
  const decimal = /^(\d{1,7})(?:[.,](\d{1,4}))?$/.exec(plain);
  if (decimal === null) return refused;
  const whole = decimal[1]!;
  const decimals = decimal[2] ?? '';
  if (decimals.length >= 2) {
    const typed = `${Number(whole)}.${decimals}`;
    const nominal = nominalRates.find((rate) => isCutOf((rate * 1000) / 1001, typed, decimals.length));
    if (nominal !== undefined) return { rate: { frames: nominal * 1000, seconds: 1001 } };
  }
  return lowestTerms(Number(whole + decimals), 10 ** decimals.length);
}

function isCutOf(exact: number, typed: string, decimals: number): boolean {
  const scale = 10 ** decimals;
  return exact.toFixed(decimals) === typed || (Math.floor(exact * scale) / scale).toFixed(decimals) === typed;
}

function lowestTerms(frames: number, seconds: number): { readonly rate: Rate } | { readonly refused: string } {
  if (frames === 0 || seconds === 0) return refused;
  const divisor = greatestCommonDivisor(frames, seconds);
  const rate = { frames: frames / divisor, seconds: seconds / divisor };
  if (rate.frames > 1_000_000 || rate.seconds > 10_000) return refused;
  return { rate };
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
