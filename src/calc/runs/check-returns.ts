import type { Check, Fix, Place } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { panelName } from '../surfaces/panel-at';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import type { RunsInputs } from './compute-runs';
import type { RunsResults } from './run-result';
import type { WiredZone } from './wire-zones';

const mostPlaces = 50;

/** Whether runs return to where it was asked for, and whether the cables of the returns drop from within reach. */
export function checkReturns(
  inputs: RunsInputs,
  table: SurfaceTable,
  zones: readonly WiredZone[],
  results: RunsResults,
): Check[] {
  const { returns } = zones[0]!.ports;
  if (returns === 'none') return [];
  return [checkApart(inputs, table, zones, results), ...checkDrops(inputs, table, results)];
}

/** A return on another breakout or processor survives the loss of its own; where there is no other it does not. */
function checkApart(inputs: RunsInputs, table: SurfaceTable, zones: readonly WiredZone[], results: RunsResults): Check {
  const { returns } = zones[0]!.ports;
  const boxOf = (port: string) => port.slice(0, port.lastIndexOf('-'));
  const runs = results.runs.filter(({ surfaceId }) => surfaceId === table.surfaceId);
  const together = runs.filter(({ port, returnPort, zone, returnProcessor }) =>
    returns === 'processor'
      ? returnProcessor === inputs.zones.zones[zone]!.processor
      : returns === 'breakout' && boxOf(port) === boxOf(returnPort!),
  );
  const failed = together.length > 0;
  const fix = failed ? returnsFix(inputs, table) : null;
  const whatFails = returns === 'processor' ? 'processor' : 'breakout';
  return {
    id: `runs.returns.${table.letter}`,
    chapter: 'runs',
    severity: failed ? 'watch' : 'pass',
    measured: together.length,
    limit: 0,
    unit: 'count',
    where: failed ? portPlaces(together.map(({ port }) => port)) : [{ kind: 'surface', name: table.letter }],
    sentence: failed
      ? `Runs of ${surfaceWords(table)} that return to the ${whatFails} they come from, for there is no other: {measured}. They go dark with it.`
      : `Every run of ${surfaceWords(table)} returns to a second port: {runs}, and as many returns.`,
    values: { runs: { value: runs.length, unit: 'count' } },
    ...(fix === null ? {} : { fix }),
  };
}

const portPlaces = (names: readonly string[]): Place[] =>
  names.slice(0, mostPlaces).map((name) => ({ kind: 'port', name }));

/** A second port is what there is: asked for as such, it is no surprise. */
function returnsFix({ signal }: RunsInputs, table: SurfaceTable): Fix {
  const own = signal.bySurface.findIndex(({ surfaceId, returns }) => surfaceId === table.surfaceId && returns !== null);
  return setFieldsFix('Return to a second port of the same processor', 'returns', [
    { path: own < 0 ? ['signal', 'returns'] : ['signal', 'bySurface', own, 'returns'], value: 'port' },
  ]);
}

function checkDrops(inputs: RunsInputs, table: SurfaceTable, results: RunsResults): Check[] {
  if (table.kind === 'ceiling') return [];
  const { reachMm } = inputs.signal;
  const runs = results.runs.filter(({ surfaceId }) => surfaceId === table.surfaceId);
  if (runs.length === 0) return [];
  const high = runs.filter(({ exitHeightMm }) => exitHeightMm > reachMm);
  const highest = runs.reduce((most, run) => (run.exitHeightMm > most.exitHeightMm ? run : most));
  const offset = inputs.surfaces.offsets[inputs.surfaces.surfaces.indexOf(table)]!;
  const where = (high.length > 0 ? high : [highest]).slice(0, mostPlaces).map(({ start, count }): Place => {
    const panel = results.order[start + count - 1]! - offset;
    return { kind: 'panel', name: panelName(inputs.surfaces, table, table.column[panel]!, table.row[panel]!) };
  });
  return [
    {
      id: `runs.returns-reach.${table.letter}`,
      chapter: 'runs',
      severity: high.length > 0 ? 'watch' : 'pass',
      measured: highest.exitHeightMm,
      limit: reachMm,
      unit: 'mm',
      where,
      sentence:
        high.length > 0
          ? `Returns of ${surfaceWords(table)} that drop from above {limit}: {high} of {runs}, the highest from {measured}. They are out of reach from the floor.`
          : `Every return of ${surfaceWords(table)} drops from within reach: the highest from {measured}, within {limit}.`,
      values: { high: { value: high.length, unit: 'count' }, runs: { value: runs.length, unit: 'count' } },
    },
  ];
}
