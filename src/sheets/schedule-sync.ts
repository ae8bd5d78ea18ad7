import type { NodesResults } from '../calc/nodes/node-result';
import type { Sync } from '../plan/sync';
import { counted } from '../units/counted';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';

/** What runs on each cable of the sync, by the standard that defines it, and the cable that carries it. */
export const syncFormats: Readonly<Record<Sync['reference'], { readonly format: string; readonly cable: string }>> = {
  'black-burst': { format: 'Black burst, SMPTE ST 318', cable: 'Coaxial, 75 ohm' },
  'tri-level': { format: 'Tri-level, SMPTE ST 274', cable: 'Coaxial, 75 ohm' },
  ptp: { format: 'PTP, SMPTE ST 2059-2', cable: 'Network' },
};

/** Sync tree: a row for each cable, from the reference on, with its outlet and the phase of what it ends at. */
export function scheduleSync(reference: Sync['reference'], lines: NodesResults['sync']): Schedule {
  const { format, cable } = syncFormats[reference];
  const splitters = lines.filter(({ kind }) => kind === 'splitter').length;
  return {
    id: 'sync',
    title: 'Sync by cable',
    columns: [
      figures('number', 'Cable', 'count'),
      words('from', 'From'),
      figures('outlet', 'Outlet', 'count'),
      words('to', 'To'),
      words('format', 'Format'),
      words('cable', 'Kind of cable'),
      figures('phaseMs', 'Phase', 's'),
      figures('phaseDegrees', 'Phase of a frame', 'deg'),
    ],
    count: lines.length,
    row: (index) => {
      const { from, outlet, to, phaseMs, phaseDegrees } = lines[index]!;
      return [index + 1, from, outlet, to, format, cable, phaseMs / 1000, phaseDegrees];
    },
    panelOf: () => null,
    totals: [null, counted(lines.length, 'cable'), null, counted(splitters, 'splitter'), null, null, null, null],
  };
}
