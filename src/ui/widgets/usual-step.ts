import type { DisplayOptions } from '../../units/display-options';
import { plainUnit } from '../../units/plain-unit';
import type { Unit } from '../../units/unit';

const steps: Readonly<Partial<Record<Unit, number>>> = {
  m2: 1,
  deg: 0.5,
  px: 1,
  kg: 0.1,
  kPa: 0.1,
  W: 10,
  'm3/s': 0.1,
  share: 0.01,
  money: 100,
};

/** What an arrow key adds in a field of this unit, in the unit itself: 0.1 m or 1 in of a length, 1 % of a share. */
export function usualStep(unit: Unit, options: DisplayOptions, plain?: string): number {
  if (unit !== 'mm') return steps[unit] ?? 1;
  const spelling = plainUnit(unit, options, plain);
  if (spelling === 'ft' || spelling === 'in') return 25.4;
  return spelling === 'mm' ? 1 : 100;
}
