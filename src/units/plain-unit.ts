import type { DisplayOptions } from './display-options';
import type { Unit } from './unit';

/**
 * The spelling that a bare number in a field stands for, and that the field shows: `chosen` where the field names one
 * ('mm' for a panel's width), else m or feet for lengths, kg, W, % and so on. Empty for money and counts.
 */
export function plainUnit(unit: Unit, options: DisplayOptions, chosen?: string): string {
  if (chosen !== undefined) return chosen;
  const inFeet = options.lengths === 'feet';
  switch (unit) {
    case 'mm':
      return inFeet ? 'ft' : 'm';
    case 'm2':
      return inFeet ? 'ft²' : 'm²';
    case 'm3':
      return inFeet ? 'ft³' : 'm³';
    case 'm3/s':
      return inFeet ? 'ft³/min' : 'm³/s';
    case 'deg':
      return '°';
    case 'btuh':
      return 'BTU/h';
    case 'bps':
      return 'bit/s';
    case 'share':
      return '%';
    case 'money':
    case 'count':
      return '';
    default:
      return unit;
  }
}
