import type { Check, Place, Severity } from '../calc/chapter';
import type { Evaluation, Headline } from '../calc/evaluation';
import { panelAt } from '../calc/surfaces/panel-at';
import type { DisplayOptions } from '../units/display-options';
import { formatSentence } from '../units/format-sentence';

/** What `check --json` prints: figures in the units that their names say, names as a crew reads them. */
export interface CheckRecord {
  readonly headline: Headline;
  readonly checks: readonly CheckLine[];
  readonly surfaces: readonly SurfaceLine[];
  readonly zones: readonly ZoneLine[];
  readonly runs: readonly RunLine[];
  readonly circuits: readonly CircuitLine[];
  readonly legs: readonly LegLine[];
}

interface CheckLine extends Pick<Check, 'id' | 'chapter' | 'measured' | 'limit' | 'unit'> {
  readonly severity: Severity;
  readonly where: readonly Place[];
  readonly sentence: string;
  /** What a repair would do; null where there is none. */
  readonly fix: string | null;
}

interface SurfaceLine {
  readonly surface: string;
  readonly kind: 'wall' | 'ceiling';
  readonly name: string;
  readonly panels: number;
  readonly columns: number;
  readonly rows: number;
  readonly pixels: number;
  readonly canvasWidth: number;
  readonly canvasHeight: number;
  readonly areaM2: number | null;
  readonly heightMm: number | null;
  readonly insideDiameterMm: number | null;
  readonly openingMm: number | null;
}

interface ZoneLine {
  readonly zone: number;
  readonly surface: string;
  readonly processor: number;
  readonly firstColumn: number;
  readonly columns: number;
  readonly firstRow: number;
  readonly rows: number;
  readonly canvasWidth: number;
  readonly canvasHeight: number;
  /** How many. */
  readonly panels: number;
  readonly ports: number;
}

interface RunLine {
  readonly surface: string;
  readonly zone: number;
  readonly port: string;
  /** Port that its last panel goes back to; null without a return. */
  readonly returnPort: string | null;
  readonly pixels: number;
  readonly share: number;
  /** Names in order, entry first. */
  readonly panels: readonly string[];
}

interface CircuitLine {
  readonly circuit: string;
  readonly distro: number;
  readonly leg: string;
  readonly surface: string;
  /** Names in order, entry first. */
  readonly panels: readonly string[];
  readonly watts: number;
  readonly currentA: number;
  readonly limitA: number;
}

interface LegLine {
  readonly leg: string;
  readonly currentA: number;
  readonly limitA: number | null;
}

/** The chapters that the record is made of. */
export type Recorded = Pick<
  Evaluation,
  'headline' | 'checks' | 'surfaces' | 'walls' | 'ceilings' | 'picture' | 'zones' | 'runs' | 'power'
>;

export function checkRecord(evaluation: Recorded, options: DisplayOptions): CheckRecord {
  const { surfaces, zones, runs, power } = evaluation;
  const letters = new Map(surfaces.surfaces.map((surface) => [surface.surfaceId, surface.letter]));
  const letterOf = (surfaceId: string) => letters.get(surfaceId) ?? surfaceId;
  const namesOf = (order: Uint32Array, start: number, count: number) =>
    Array.from(order.subarray(start, start + count), (index) => panelAt(surfaces, index)?.name ?? '');
  return {
    headline: evaluation.headline,
    checks: evaluation.checks.map((check) => checkLine(check, options)),
    surfaces: surfaceLines(evaluation),
    zones: zones.results.zones.map((zone, i) => ({
      zone: i + 1,
      surface: zone.letter,
      processor: zone.processor,
      firstColumn: zone.firstColumn,
      columns: zone.columns,
      firstRow: zone.firstRow,
      rows: zone.rows,
      canvasWidth: zone.canvasWidth,
      canvasHeight: zone.canvasHeight,
      panels: zone.panels,
      ports: zone.ports,
    })),
    runs: runs.results.runs.map((run) => ({
      surface: letterOf(run.surfaceId),
      zone: run.zone + 1,
      port: run.port,
      returnPort: run.returnPort,
      pixels: run.pixels,
      share: run.share,
      panels: namesOf(runs.results.order, run.start, run.count),
    })),
    circuits: power.results.circuits.map((circuit) => ({
      circuit: circuit.name,
      distro: circuit.distro,
      leg: circuit.leg,
      surface: letterOf(circuit.surfaceId),
      panels: namesOf(power.results.order, circuit.start, circuit.count),
      watts: circuit.watts,
      currentA: circuit.currentA,
      limitA: circuit.limitA,
    })),
    legs: power.results.legs.map(({ leg, currentA, limitA }) => ({ leg, currentA, limitA })),
  };
}

function checkLine(check: Check, options: DisplayOptions): CheckLine {
  return {
    id: check.id,
    chapter: check.chapter,
    severity: check.severity,
    measured: check.measured,
    limit: check.limit,
    unit: check.unit,
    where: check.where,
    sentence: formatSentence(check, options),
    fix: check.fix?.label ?? null,
  };
}

function surfaceLines({ surfaces, walls, ceilings, picture }: Recorded): SurfaceLine[] {
  return surfaces.surfaces.map((surface) => {
    const wall = walls.results.walls.find((each) => each.wallId === surface.surfaceId);
    const ceiling = ceilings.results.ceilings.find((each) => each.ceilingId === surface.surfaceId);
    const fed = picture.results.surfaces.find((each) => each.surfaceId === surface.surfaceId);
    return {
      surface: surface.letter,
      kind: surface.kind,
      name: surface.name,
      panels: surface.count,
      columns: surface.columns,
      rows: surface.rows,
      pixels: fed?.pixels ?? wall?.pixels ?? ceiling?.pixels ?? 0,
      canvasWidth: surface.canvasWidth,
      canvasHeight: surface.canvasHeight,
      areaM2: wall?.areaM2 ?? ceiling?.areaM2 ?? null,
      heightMm: wall?.heightMm ?? null,
      insideDiameterMm: wall?.insideDiameterMm ?? null,
      openingMm: wall?.openingMm ?? null,
    };
  });
}
