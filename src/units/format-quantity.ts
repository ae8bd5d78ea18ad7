import { decimalsFor } from './decimals-for';
import type { DisplayOptions } from './display-options';
import { exactFactors } from './exact-factors';
import { formatLength } from './format-length';
import { formatNumber } from './format-number';
import type { Unit } from './unit';

/**
 * A figure with its unit, as people read it. `extra` asks for so many digits more than usual.
 * With lengths in feet, areas, volumes and air follow; masses and pressures keep their metric figure with the other beside.
 * What is no number, or beyond any that a plan comes to, reads 'not known'.
 */
export function formatQuantity(value: number, unit: Unit, options: DisplayOptions, extra = 0): string {
  if (!(Math.abs(value) < 1e30)) return 'not known';
  const inFeet = options.lengths === 'feet';
  /** With three significant digits, or with at most so many decimals. */
  const of = (figure: number, name: string, most = decimalsFor(figure, 2)) =>
    `${formatNumber(figure, { least: 0, most: most + extra }, options.locale)}${name}`;
  switch (unit) {
    case 'mm':
      return formatLength(value, options, extra);
    case 'm2':
      return inFeet ? of(value / exactFactors.m2ASquareFoot, ' ft²') : of(value, ' m²');
    case 'm3':
      return inFeet ? of(value / exactFactors.m3ACubicFoot, ' ft³') : of(value, ' m³');
    case 'm3/s':
      return inFeet ? of((value / exactFactors.m3ACubicFoot) * 60, ' ft³/min') : of(value, ' m³/s');
    case 'kg':
      return of(value, ' kg') + (inFeet ? ` (${of(value / exactFactors.kgAPound, ' lb')})` : '');
    case 'kPa':
      return of(value, ' kPa') + (inFeet ? ` (${of(value / exactFactors.kpaAPsf, ' psf')})` : '');
    case 'deg':
      return of(value, '°', 3);
    case 'px':
      return Math.abs(value) >= 1e6 ? of(value / 1e6, ' M px') : of(value, ' px');
    case 'W':
      return Math.round(Math.abs(value)) >= 1000 ? of(value / 1000, ' kW') : of(value, ' W');
    case 'tons':
      return of(value, ' tons');
    case 'btuh':
      return of(value, ' BTU/h', 0);
    case 's':
      return Math.abs(value) < 1 && value !== 0 ? of(value * 1000, ' ms') : of(value, ' s');
    case 'fps':
      return of(value, ' fps', 3);
    case 'bps':
      return formatRateOfData(value, of);
    case 'share':
      return of(value * 100, ' %', 1);
    case 'money':
      return formatMoney(value, options, extra);
    case 'days':
      return of(value, value === 1 ? ' day' : ' days', 1);
    case 'count':
      return of(value, '');
    case 'A':
      return Math.abs(value) < 0.1 && value !== 0 ? of(value * 1000, ' mA') : of(value, ' A');
    case 'Hz':
      return Math.abs(value) >= 1e6 ? of(value / 1e6, ' MHz', 3) : of(value, ' Hz');
    case 'V':
    case 'min':
    case 'bit':
    case 'K':
      return of(value, ` ${unit}`);
  }
}

function formatRateOfData(bps: number, of: (figure: number, name: string) => string): string {
  const size = Math.abs(bps);
  if (size >= 1e9) return of(bps / 1e9, ' Gbit/s');
  if (size >= 1e6) return of(bps / 1e6, ' Mbit/s');
  return size >= 1e3 ? of(bps / 1e3, ' kbit/s') : of(bps, ' bit/s');
}

/** Whole units from 1,000 on; below that, and where `extra` asks for it, the currency's own decimals. */
function formatMoney(amount: number, options: DisplayOptions, extra: number): string {
  const isLarge = Math.abs(amount) >= 999.995 && extra === 0;
  return new Intl.NumberFormat(options.locale, {
    style: 'currency',
    currency: options.currency,
    signDisplay: 'negative',
    ...(isLarge ? { maximumFractionDigits: 0 } : {}),
  }).format(amount);
}
