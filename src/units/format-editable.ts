import type { DisplayOptions } from './display-options';
import { exactFactors } from './exact-factors';
import { formatFeet } from './format-feet';
import { measures, unitMeasures } from './measures';
import { plainUnit } from './plain-unit';
import { settleQuantity } from './settle-quantity';
import type { Unit } from './unit';

/**
 * The text that a field holds while one edits it: the whole figure, a decimal point, no groups, in the unit that a bare
 * number there stands for (`plain`, see plainUnit). parseQuantity gives back the very figure.
 */
export function formatEditable(value: number, unit: Unit, options: DisplayOptions, plain?: string): string {
  const spelling = plainUnit(unit, options, plain);
  if (spelling === 'ft') return editableFeet(value);
  const { dimension, size } = unitMeasures[unit];
  const text = shortest(value, (spelling === '' ? 1 : measures[dimension].sizes[spelling]!) / size, unit);
  return spelling === '' || spelling === '°' ? text + spelling : `${text} ${spelling}`;
}

/** Feet and inches: with a fraction where one of 64 parts is exact to the micrometre, else with decimals. */
function editableFeet(mm: number): string {
  const sixtyFourth = exactFactors.mmAnInch / 64;
  if (Math.abs(Math.round(mm / sixtyFourth) * sixtyFourth - mm) < 0.0005) return formatFeet(mm, 64);
  const feet = Math.floor(Math.abs(mm) / exactFactors.mmAFoot);
  const inches = shortest(Math.abs(mm) - feet * exactFactors.mmAFoot, exactFactors.mmAnInch, 'mm');
  return `${mm < 0 ? '-' : ''}${feet === 0 ? '' : `${feet}' `}${inches}"`;
}

/** The fewest decimals that come back as the same figure when `size` is multiplied in again. */
function shortest(value: number, size: number, unit: Unit): string {
  const kept = settleQuantity(value, unit);
  for (let decimals = 0; decimals < 15; decimals += 1) {
    const text = (value / size).toFixed(decimals);
    if (settleQuantity(Number(text) * size, unit) === kept) return Number(text) === 0 ? '0' : text;
  }
  return (value / size).toFixed(15);
}
