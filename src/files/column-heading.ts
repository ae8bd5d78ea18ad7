import type { ScheduleColumn } from '../sheets/schedule';
import type { Unit } from '../units/unit';

/** What a heading adds for a unit; counts, shares of one and words add nothing, money adds the plan's currency. */
const unitNames: Readonly<Record<Exclude<Unit, 'money'>, string>> = {
  mm: 'mm',
  m2: 'm²',
  m3: 'm³',
  deg: '°',
  px: 'px',
  kg: 'kg',
  kPa: 'kPa',
  A: 'A',
  V: 'V',
  W: 'W',
  tons: 'tons',
  btuh: 'BTU/h',
  'm3/s': 'm³/s',
  min: 'min',
  s: 's',
  Hz: 'Hz',
  fps: 'fps',
  bit: 'bit',
  bps: 'bit/s',
  share: '',
  days: 'days',
  K: 'K',
  count: '',
};

/** A column's title with its unit: the cells below hold plain numbers. `currency` is an ISO 4217 code. */
export function columnHeading({ title, unit }: ScheduleColumn, currency: string): string {
  if (unit === null) return title;
  const name = unit === 'money' ? currency : unitNames[unit];
  return name === '' ? title : `${title} (${name})`;
}
