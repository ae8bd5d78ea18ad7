import { exactFactors } from './exact-factors';

/**
 * A length in feet and inches, rounded to the nearest eighth of an inch (`denominator` parts): 7315.2 mm is 24' 0",
 * 165 mm is 6 1/2". Halves round away from zero.
 */
export function formatFeet(mm: number, denominator = 8): string {
  const parts = Math.round((Math.abs(mm) / exactFactors.mmAnInch) * denominator);
  const feet = Math.floor(parts / (12 * denominator));
  const inches = Math.floor(parts / denominator) - feet * 12;
  const fraction = fractionText(parts % denominator, denominator);
  const inchText = fraction === '' ? `${inches}"` : inches === 0 ? `${fraction}"` : `${inches} ${fraction}"`;
  const sign = mm < 0 && parts > 0 ? '-' : '';
  return feet === 0 ? `${sign}${inchText}` : `${sign}${feet}' ${inchText}`;
}

function fractionText(parts: number, denominator: number): string {
  if (parts === 0) return '';
  return parts % 2 === 0 ? fractionText(parts / 2, denominator / 2) : `${parts}/${denominator}`;
}
