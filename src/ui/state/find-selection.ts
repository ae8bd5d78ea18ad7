import { findCulprit } from '../../calc/faults/find-culprit';
import { columnName } from '../../calc/surfaces/column-name';
import { panelName } from '../../calc/surfaces/panel-at';
import type { SurfaceSet, SurfaceTable } from '../../calc/surfaces/surface-table';
import { faultModelOf, type Wired } from './fault-model-of';
import type { Selection } from './selection';
import { selectionOfCulprit } from './selection-of-culprit';
import { zoneName } from './zone-name';

const panelOrColumn = /^(?:([A-Z])\s*)?C\s*(\d+)(?:\s*R\s*(\d+))?$/;

function surfaceByLetter(set: SurfaceSet, letter: string | undefined): SurfaceTable | undefined {
  return letter === undefined ? set.surfaces[0] : set.surfaces.find((surface) => surface.letter === letter);
}

function findOnSurface(set: SurfaceSet, name: string): Selection | null {
  const match = panelOrColumn.exec(name);
  if (!match) return null;
  const surface = surfaceByLetter(set, match[1]);
  const column = Number(match[2]);
  if (!surface || column < 1 || column > surface.columns) return null;
  if (match[3] === undefined) {
    return { kind: 'column', surfaceId: surface.surfaceId, column, name: columnName(set, surface, column) };
  }
  const row = Number(match[3]);
  if (row < 1 || row > surface.rows) return null;
  const local = surface.at[(column - 1) * surface.rows + (row - 1)] ?? -1;
  if (local < 0) return null;
  const index = (set.offsets[set.surfaces.indexOf(surface)] ?? 0) + local;
  return { kind: 'panel', index, name: panelName(set, surface, column, row) };
}

/** What a name means in an evaluation: a panel or column ('A C38 R9', 'c38r9'), a port ('3B-04'), a circuit ('D4-11'), a
 *  processor ('processor 3') or any other part of the wiring ('N3', 'distro 4', 'breakout 3B'); null where nothing has that name. */
export function findSelection(evaluation: Wired, text: string): Selection | null {
  const name = text.trim().toUpperCase();
  const onSurface = findOnSurface(evaluation.surfaces, name);
  if (onSurface) return onSurface;
  const port = name.replace(/^PORT\s+/, '');
  const run = evaluation.runs.results.runs.findIndex((one) => one.port.toUpperCase() === port);
  if (run >= 0) return { kind: 'run', index: run, name: evaluation.runs.results.runs[run]!.port };
  const circuitText = name.replace(/^CIRCUIT\s+/, '');
  const circuit = evaluation.power.results.circuits.findIndex((one) => one.name.toUpperCase() === circuitText);
  if (circuit >= 0) return { kind: 'circuit', index: circuit, name: evaluation.power.results.circuits[circuit]!.name };
  const processor = /^PROCESSOR\s+(\d+)$/.exec(name);
  const zone = evaluation.zones.results.zones.findIndex((one) => processor && one.processor === Number(processor[1]));
  if (zone >= 0) return { kind: 'zone', index: zone, name: zoneName(evaluation.zones.results.zones[zone]!) };
  const culprit = findCulprit(faultModelOf(evaluation), text);
  return culprit && selectionOfCulprit(evaluation, culprit);
}
