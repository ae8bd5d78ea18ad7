import { decimalsFor } from './decimals-for';
import type { DisplayOptions } from './display-options';
import { exactFactors } from './exact-factors';
import { formatFeet } from './format-feet';
import { formatNumber } from './format-number';

/**
 * A length in mm as people read it. Metric: below 1 m in mm with three significant digits, from 1 m in m with two
 * decimals, from 100 m with one. Feet: feet and inches to the nearest 1/8 in; what is shorter than an inch (a pitch, a
 * seam) stays in mm, as the trade writes it. `extra` asks for so many digits more (feet: halves the step).
 */
export function formatLength(mm: number, options: DisplayOptions, extra = 0): string {
  const size = Math.abs(mm);
  if (options.lengths === 'feet' && (size === 0 || size >= exactFactors.mmAnInch))
    return formatFeet(mm, 8 * 2 ** extra);
  if (Math.round(size) < 1000) {
    return `${formatNumber(mm, { least: 0, most: decimalsFor(mm, 2) + extra }, options.locale)} mm`;
  }
  const decimals = (size >= 99_995 ? 1 : 2) + extra;
  return `${formatNumber(mm / 1000, { least: decimals - extra, most: decimals }, options.locale)} m`;
}
