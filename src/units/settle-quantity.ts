import type { Unit } from './unit';

/**
 * The figure that a document keeps: lengths in whole micrometres, anything else with 12 significant digits and at most 12
 * decimals, which takes off what binary fractions add (0.1 + 0.2). Never -0.
 */
export function settleQuantity(value: number, unit: Unit): number {
  const settled = unit === 'mm' ? Math.round(value * 1000) / 1000 : Number(Number(value.toPrecision(12)).toFixed(12));
  return settled + 0;
}
