import { zonePanels } from '../calc/zones/zone-of-panels';
import { latticeSpan } from './lattice-span';
import type { Cell, Schedule } from './schedule';
import { figures, words } from './schedule-column';
import type { StageParts } from './stage-parts';

type CountedParts = Pick<StageParts, 'surfaces' | 'zones' | 'runs' | 'power'>;

interface Area {
  readonly name: string;
  /** Surfaces are summed, zones are parts of them. */
  readonly kind: 'surface' | 'zone';
  /** Panels in it, by their numbers through all surfaces. */
  readonly panels: readonly number[];
}

/**
 * Panels and the cables between them by area: a row for each surface and, where it has more than one, for each of its zones.
 * A jumper counts where it leads to: data jumpers = panels on runs - runs that begin there, power jumpers likewise.
 */
export function scheduleCounts(parts: CountedParts): Schedule {
  const types = typesOf(parts);
  const typeOf = typeNumbers(parts, types);
  const begins = beginnings(parts);
  const areas = parts.surfaces.surfaces.flatMap((_, s) => areasOf(parts, s));
  const rows = areas.map(({ name, panels }): readonly Cell[] => {
    const count = (counts: (panel: number) => boolean) =>
      panels.reduce((sum, panel) => sum + (counts(panel) ? 1 : 0), 0);
    const runs = count((panel) => begins.run.has(panel));
    const circuits = count((panel) => begins.circuit.has(panel));
    return [
      name,
      ...types.map((_, type) => count((panel) => typeOf[panel] === type)),
      panels.length,
      runs,
      count((panel) => parts.runs.runOf[panel]! >= 0) - runs,
      count((panel) => begins.back.has(panel)),
      circuits,
      count((panel) => parts.power.circuitOf[panel]! >= 0) - circuits,
    ];
  });
  return {
    id: 'counts',
    title: 'Panels and jumpers by area',
    columns: [
      words('area', 'Area'),
      ...types.map((name, type) => figures(`type${type}`, name, 'count')),
      figures('panels', 'Panels', 'count'),
      figures('runs', 'Home runs', 'count'),
      figures('dataJumpers', 'Data jumpers', 'count'),
      figures('returns', 'Returns', 'count'),
      figures('circuits', 'Circuits', 'count'),
      figures('powerJumpers', 'Power jumpers', 'count'),
    ],
    count: rows.length,
    row: (index) => rows[index]!,
    panelOf: (index) => areas[index]!.panels[0] ?? null,
    totals: [
      'All',
      ...Array.from({ length: types.length + 6 }, (_, column) =>
        rows.reduce((sum, row, index) => sum + (areas[index]!.kind === 'surface' ? Number(row[column + 1]) : 0), 0),
      ),
    ],
  };
}

function areasOf({ surfaces, zones }: CountedParts, s: number): readonly Area[] {
  const table = surfaces.surfaces[s]!;
  const offset = surfaces.offsets[s]!;
  const mine = zones.filter(({ surfaceId }) => surfaceId === table.surfaceId);
  const whole: Area = {
    kind: 'surface',
    name: `${table.letter} ${table.name}`.trim(),
    panels: Array.from({ length: table.count }, (_, i) => offset + i),
  };
  if (mine.length < 2) return [whole];
  return [
    whole,
    ...mine.map(
      (zone): Area => ({
        kind: 'zone',
        name: `${table.letter}, processor ${zone.processor}: ${latticeSpan('C', zone.firstColumn, zone.columns)}, ${latticeSpan('R', zone.firstRow, zone.rows)}`,
        panels: zonePanels(table, zone).map((local) => offset + local),
      }),
    ),
  ];
}

/** Names of all types that stand anywhere, each once. */
function typesOf({ surfaces }: CountedParts): readonly string[] {
  return [...new Set(surfaces.surfaces.flatMap((table) => table.types.map(({ name }) => name)))];
}

function typeNumbers({ surfaces }: CountedParts, types: readonly string[]): Uint16Array {
  const numbers = new Uint16Array(surfaces.total);
  surfaces.surfaces.forEach((table, s) => {
    const own = table.types.map(({ name }) => types.indexOf(name));
    for (let i = 0; i < table.count; i++) numbers[surfaces.offsets[s]! + i] = own[table.type[i]!]!;
  });
  return numbers;
}

/** Panels at which a run or a circuit begins, and those from which a run goes back. */
function beginnings({ runs, power }: CountedParts) {
  return {
    run: new Set(runs.runs.map(({ start }) => runs.order[start]!)),
    back: new Set(
      runs.runs.flatMap(({ start, count, returnPort }) =>
        returnPort === null ? [] : [runs.order[start + count - 1]!],
      ),
    ),
    circuit: new Set(power.circuits.map(({ start }) => power.order[start]!)),
  };
}
