import type { Unit } from '../chapter';
import type { Headline } from '../evaluation';
import type { Change, Said } from './change';

const figures: Readonly<Record<keyof Headline, readonly [name: string, unit: Unit]>> = {
  panels: ['Panels', 'count'],
  columns: ['Columns', 'count'],
  rows: ['Rows', 'count'],
  insideDiameterMm: ['Inside diameter', 'mm'],
  openingMm: ['Opening', 'mm'],
  wallHeightMm: ['Wall height', 'mm'],
  pixels: ['Pixels', 'px'],
  processors: ['Processors', 'count'],
  breakouts: ['Breakouts', 'count'],
  portsUsed: ['Ports used', 'count'],
  portsLeast: ['Ports, least possible', 'count'],
  panelsPerPortMin: ['Panels a port, fewest', 'count'],
  panelsPerPortMax: ['Panels a port, most', 'count'],
  fullestPortShare: ['Fullest port', 'share'],
  circuits: ['Circuits', 'count'],
  worstLegA: ['Worst leg', 'A'],
  neutralA: ['Neutral', 'A'],
  powerMaxW: ['Power, full white', 'W'],
  heatTons: ['Heat, full white', 'tons'],
  massKg: ['Mass', 'kg'],
  priceTotal: ['Price, all bought new', 'money'],
};

/** Sums of the same parts in another order differ by less than this share. */
const tolerance = 1e-9;

/** Head figures that differ. */
export function compareFigures(before: Headline, after: Headline): Change[] {
  return (Object.keys(figures) as (keyof Headline)[]).flatMap((key): Change[] => {
    const was = before[key];
    const is = after[key];
    if (isAlike(was, is)) return [];
    const [name, unit] = figures[key];
    const say = (value: number | null): Said | null => (value === null ? null : [{ value, unit }]);
    return [{ kind: 'changed', what: 'figure', name, before: say(was), after: say(is) }];
  });
}

function isAlike(was: number | null, is: number | null): boolean {
  if (was === null || is === null) return was === is;
  return Math.abs(was - is) <= tolerance * Math.max(Math.abs(was), Math.abs(is));
}
