import type { Unit } from '../units/unit';
import type { ScheduleColumn } from './schedule';

/** A column of words. */
export function words(key: string, title: string): ScheduleColumn {
  return { key, title, unit: null, align: 'start' };
}

/** A column of figures. */
export function figures(key: string, title: string, unit: Unit): ScheduleColumn {
  return { key, title, unit, align: 'end' };
}
