import type { ExistingWiring, Signal } from '../../../plan/signal';
import type { PortsResults } from '../../ports/port-result';
import { panelAt } from '../../surfaces/panel-at';
import type { SurfaceSet } from '../../surfaces/surface-table';
import { runLimits } from '../run-limits';
import type { ExistingFigures, ExistingRun } from '../run-result';
import { lowerEdgeMm } from '../zone-grid';
import { countedPixels } from './counted-pixels';
import { panelByName } from './panel-by-name';

export interface ExistingInputs {
  readonly existingWiring: ExistingWiring;
  readonly surfaces: SurfaceSet;
  readonly ports: PortsResults;
  readonly signal: Pick<Signal, 'reachMm'>;
}

/** A row whose panel was found. */
interface KnownRow {
  readonly panel: number;
  readonly place: number;
}

/** Traces a wiring that exists already on the surfaces as they are, at the rate and depth that the ports are sized for. */
export function traceExisting({ existingWiring, surfaces, ports, signal }: ExistingInputs): ExistingFigures {
  const { byPort, unknownPanels, places } = sortRows(existingWiring, surfaces);
  const rowsOf = new Uint8Array(surfaces.total);
  const twicePanels: number[] = [];
  for (const rows of byPort.values()) {
    for (const { panel } of rows) {
      // Counts to two: a panel named more often is still named once here.
      if (rowsOf[panel] === 1) twicePanels.push(panel);
      rowsOf[panel] = rowsOf[panel] === 0 ? 1 : 2;
    }
  }
  const missingPanels: number[] = [];
  for (let panel = 0; panel < surfaces.total; panel++) if (rowsOf[panel] === 0) missingPanels.push(panel);
  const runs = [...byPort].flatMap(([port, rows]) => (rows.length > 0 ? [measure(port, rows)] : []));
  const counts = runs.map(({ panels }) => panels.length);
  const shares = runs.flatMap(({ share }) => share ?? []);
  return {
    source: existingWiring.source,
    runs,
    ports: byPort.size,
    panelsPerPortMin: counts.length > 0 ? counts.reduce((a, b) => Math.min(a, b)) : null,
    panelsPerPortMax: counts.length > 0 ? counts.reduce((a, b) => Math.max(a, b)) : null,
    fullestShare: shares.length > 0 ? shares.reduce((a, b) => Math.max(a, b)) : null,
    entriesOutOfReach: runs.filter(({ inReach }) => !inReach).length,
    unknownPanels,
    twicePanels,
    missingPanels,
    gapPorts: [...places].flatMap(([port, taken]) => (countsUp(taken) ? [] : [port])),
    apartPanels: runs.flatMap(({ panels }) =>
      panels.filter((panel, i) => i > 0 && !touch(surfaces, panels[i - 1]!, panel)),
    ),
  };

  function measure(port: string, rows: readonly KnownRow[]): ExistingRun {
    const panels = rows.map(({ panel }) => panel);
    const { surface, index } = panelAt(surfaces, panels[0]!)!;
    const at = surfaces.surfaces.indexOf(surface);
    const own = ports.surfaces[at]!;
    const pixels = countedPixels(surfaces, panels, own.counting);
    const entryHeightMm = lowerEdgeMm(surface, index - surfaces.offsets[at]!);
    return {
      port,
      panels,
      surfaceId: surface.surfaceId,
      pixels,
      share: own.capacityPixels > 0 ? pixels / own.capacityPixels : null,
      usableShare: own.usablePixels > 0 ? pixels / own.usablePixels : null,
      entryHeightMm,
      inReach: entryHeightMm <= runLimits(surface.kind, own, signal).reachMm,
    };
  }
}

function sortRows({ rows }: ExistingWiring, surfaces: SurfaceSet) {
  const byPort = new Map<string, KnownRow[]>();
  const places = new Map<string, number[]>();
  const unknownPanels: string[] = [];
  for (const { panel: name, port, place } of rows) {
    const known = byPort.get(port) ?? [];
    byPort.set(port, known);
    const taken = places.get(port) ?? [];
    places.set(port, taken);
    taken.push(place);
    const panel = panelByName(surfaces, name);
    if (panel < 0) unknownPanels.push(name);
    else known.push({ panel, place });
  }
  for (const known of byPort.values()) known.sort((a, b) => a.place - b.place);
  return { byPort, unknownPanels, places };
}

/** True where places are 1, 2, 3, .. in some order, each once. */
function countsUp(places: readonly number[]): boolean {
  const sorted = [...places].sort((a, b) => a - b);
  return sorted.every((place, i) => place === i + 1);
}

function touch(surfaces: SurfaceSet, a: number, b: number): boolean {
  const [one, other] = [panelAt(surfaces, a)!, panelAt(surfaces, b)!];
  return one.surface === other.surface && Math.abs(one.column - other.column) + Math.abs(one.row - other.row) === 1;
}
