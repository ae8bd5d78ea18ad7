import { cautions } from '../../calc/cautions';
import { scheduleCircuits } from '../schedule-circuits';
import { scheduleLegs } from '../schedule-legs';
import type { StageParts } from '../stage-parts';
import { takeColumns } from '../take-columns';
import { takeRows } from '../take-rows';
import { blocksPart } from './blocks-part';
import type { CrewPart } from './crew-part';

/** Legs of the supply and, distro by distro, its circuits with legs and amperes; null where there is no circuit. */
export function circuitsPart(parts: StageParts): CrewPart | null {
  const circuits = scheduleCircuits(parts);
  if (circuits.count === 0) return null;
  const legs = scheduleLegs(parts);
  const rowsOf = new Map<number, number[]>();
  parts.power.circuits.forEach(({ distro }, row) => {
    const rows = rowsOf.get(distro);
    if (rows === undefined) rowsOf.set(distro, [row]);
    else rows.push(row);
  });
  const keys = circuits.columns.map(({ key }) => key).filter((key) => key !== 'distro');
  return blocksPart('circuits', circuits.title, cautions.electricity, [
    { kind: 'text', style: 'caution', text: cautions.electricity },
    { kind: 'table', title: legs.title, schedule: legs },
    ...[...rowsOf].map(([distro, rows]) => ({
      kind: 'table' as const,
      title: `Distro ${distro}`,
      schedule: takeRows(takeColumns(circuits, keys), rows),
    })),
  ]);
}
