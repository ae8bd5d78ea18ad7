import type { Check, Place } from '../chapter';
import { breakoutsForRuns, portsARun } from '../ports/outlets';
import { panelsUnlimited } from '../ports/panels-unlimited';
import { panelName } from '../surfaces/panel-at';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import { checkHeldBreakouts } from './check-held-breakouts';
import { checkHeldPorts } from './check-held-ports';
import { checkReturns } from './check-returns';
import { chooseWayFix } from './choose-way-fix';
import type { RunsInputs } from './compute-runs';
import { checkExisting } from './existing/check-existing';
import type { LaidChanges } from './hand-changes/lay-hand-changes';
import { offerWays } from './offer-ways';
import type { Run, RunsResults } from './run-result';
import type { WiredZone } from './wire-zones';

const mostPlaces = 50;

/** Loads, reach, ports and breakouts there, chain limits, better ways, hand changes at rest, and the wiring that exists. */
export function checkRuns(inputs: RunsInputs, { zones }: LaidChanges, results: RunsResults): Check[] {
  return [
    ...inputs.surfaces.surfaces.flatMap((table, i) => {
      const own = zones.filter(({ surface }) => surface === i);
      if (own.length === 0) return [];
      const runs = results.runs.filter(({ surfaceId }) => surfaceId === table.surfaceId);
      return [
        checkLoad(table, own, runs),
        ...checkReach(inputs, table, results, runs),
        checkPortsThere(inputs, table, own, results),
        ...checkBreakouts(inputs, table, own, results),
        ...checkChain(table, own, runs),
        ...checkReturns(inputs, table, own, results),
        ...offerWays(results.surfaces[i]!, table, own, inputs.handChanges, inputs),
      ];
    }),
    ...checkResting(inputs, results),
    ...(inputs.held ? checkHeldPorts(inputs.held, results) : []),
    ...(inputs.held ? checkHeldBreakouts(inputs.held, zones, inputs.surfaces, results) : []),
    ...(results.existing === null ? [] : checkExisting(inputs, results.existing, results)),
  ];
}

const placeOf = (table: SurfaceTable): Place => ({ kind: 'surface', name: table.letter });
const portsOf = (runs: readonly Run[]): Place[] =>
  runs.slice(0, mostPlaces).map(({ port }) => ({ kind: 'port', name: port }));

function checkLoad(table: SurfaceTable, zones: readonly WiredZone[], runs: readonly Run[]): Check {
  const { ports } = zones[0]!;
  const over = runs.filter(({ pixels }) => pixels > ports.usablePixels);
  const fullest = runs.reduce((most, run) => (run.pixels > most.pixels ? run : most));
  return {
    id: `runs.load.${table.letter}`,
    chapter: 'runs',
    severity: over.length > 0 ? 'stop' : 'pass',
    measured: fullest.pixels,
    limit: ports.usablePixels,
    unit: 'px',
    where: over.length > 0 ? portsOf(over) : portsOf([fullest]),
    sentence:
      over.length > 0
        ? `Ports on ${surfaceWords(table)} with too much on them: {over}, the fullest with {measured} where {limit} may be carried.`
        : `The fullest port on ${surfaceWords(table)} has {measured} on it and may carry {limit}; {free} of its capacity stays free.`,
    values: {
      over: { value: over.length, unit: 'count' },
      free: { value: Math.max(0, 1 - fullest.share), unit: 'share' },
    },
  };
}

function checkReach(inputs: RunsInputs, table: SurfaceTable, results: RunsResults, runs: readonly Run[]): Check[] {
  if (table.kind === 'ceiling') return [];
  const high = runs.filter(({ inReach }) => !inReach);
  const highest = runs.reduce((most, run) => (run.entryHeightMm > most.entryHeightMm ? run : most));
  const entries = (high.length > 0 ? high : [highest]).slice(0, mostPlaces).map((run): Place => {
    const panel = results.order[run.start]! - inputs.surfaces.offsets[inputs.surfaces.surfaces.indexOf(table)]!;
    return { kind: 'panel', name: panelName(inputs.surfaces, table, table.column[panel]!, table.row[panel]!) };
  });
  return [
    {
      id: `runs.reach.${table.letter}`,
      chapter: 'runs',
      severity: high.length > 0 ? 'watch' : 'pass',
      measured: highest.entryHeightMm,
      limit: inputs.signal.reachMm,
      unit: 'mm',
      where: entries,
      sentence:
        high.length > 0
          ? `Entries of ${surfaceWords(table)} above {limit}: {high}, the highest at {measured}. They are out of reach from the floor.`
          : `Every entry of ${surfaceWords(table)} is within reach: the highest at {measured}, within {limit}.`,
      values: { high: { value: high.length, unit: 'count' } },
    },
  ];
}

function checkPortsThere(
  inputs: RunsInputs,
  table: SurfaceTable,
  zones: readonly WiredZone[],
  results: RunsResults,
): Check {
  const { ports } = zones[0]!;
  const there = ports.runsAProcessor;
  const short = zones.filter(({ wiring }) => wiring.ports > there);
  const each = portsARun(ports);
  const measured = each * zones.reduce((most, { wiring }) => Math.max(most, wiring.ports), 0);
  const surface = results.surfaces.find(({ surfaceId }) => surfaceId === table.surfaceId)!;
  const enough = surface.ways.find(({ processorsShort }) => processorsShort === 0);
  const fix =
    short.length > 0 && enough !== undefined
      ? chooseWayFix('Wire it in a way that has ports enough', enough.way, zones, inputs.handChanges, inputs, (after) =>
          after.every(({ wiring }) => wiring.ports <= there),
        )
      : null;
  return {
    id: `runs.ports.${table.letter}`,
    chapter: 'runs',
    severity: short.length > 0 ? 'stop' : 'pass',
    measured,
    limit: there * each,
    unit: 'count',
    where:
      short.length > 0
        ? short.slice(0, mostPlaces).map(({ zone }) => ({ kind: 'processor', name: String(zone.processor) }))
        : [placeOf(table)],
    sentence:
      short.length > 0
        ? `A processor of ${surfaceWords(table)} needs {measured} ports and has {limit}.`
        : `Each processor of ${surfaceWords(table)} has ports enough: {measured} of {limit} at the most. In all {ports}; the least possible is {least}.`,
    values: {
      ports: { value: surface.ports, unit: 'count' },
      least: { value: surface.portsLeast, unit: 'count' },
    },
    ...(fix === null ? {} : { fix }),
  };
}

function checkBreakouts(
  { held = null }: RunsInputs,
  table: SurfaceTable,
  zones: readonly WiredZone[],
  results: RunsResults,
): Check[] {
  const { portsABreakout, breakoutsAProcessor } = zones[0]!.ports;
  if (breakoutsAProcessor === 0 || portsABreakout === 0) return [];
  const needed = zones.map(({ wiring, ports }) => breakoutsForRuns(wiring.ports, ports));
  // Held names can keep more of them in use than the runs need.
  const inUse = held === null ? [] : results.zones.filter(({ surfaceId }) => surfaceId === table.surfaceId);
  const measured = Math.max(...needed, ...inUse.map(({ breakouts }) => breakouts));
  return [
    {
      id: `runs.breakouts.${table.letter}`,
      chapter: 'runs',
      severity: measured > breakoutsAProcessor ? 'stop' : 'pass',
      measured,
      limit: breakoutsAProcessor,
      unit: 'count',
      where: [placeOf(table)],
      sentence:
        measured > breakoutsAProcessor
          ? `A processor of ${surfaceWords(table)} needs {measured} breakouts and takes {limit}.`
          : `Breakouts on the processor of ${surfaceWords(table)} that has most: {measured} of {limit}.`,
    },
  ];
}

function checkChain(table: SurfaceTable, zones: readonly WiredZone[], runs: readonly Run[]): Check[] {
  const { panelsMost } = zones[0]!.ports;
  if (panelsMost >= panelsUnlimited) return [];
  const over = runs.filter(({ count }) => count > panelsMost);
  const longest = runs.reduce((most, run) => (run.count > most.count ? run : most));
  return [
    {
      id: `runs.chain.${table.letter}`,
      chapter: 'runs',
      severity: over.length > 0 ? 'stop' : 'pass',
      measured: longest.count,
      limit: panelsMost,
      unit: 'count',
      where: portsOf(over.length > 0 ? over : [longest]),
      sentence:
        over.length > 0
          ? `A run of ${surfaceWords(table)} has {measured} panels; a chain there takes {limit}.`
          : `Panels on the longest run of ${surfaceWords(table)}: {measured}; a chain there takes {limit}.`,
    },
  ];
}

function checkResting({ handChanges }: RunsInputs, { resting }: RunsResults): Check[] {
  if (resting.length === 0) return [];
  const indexOf = new Map(handChanges.map(({ id }, i) => [id, i]));
  return [
    {
      id: 'runs.resting',
      chapter: 'runs',
      severity: 'watch',
      measured: resting.length,
      limit: 0,
      unit: 'count',
      where: resting.slice(0, mostPlaces).map(({ id }) => ({ kind: 'field', name: `handChanges[${indexOf.get(id)}]` })),
      sentence: `Hand changes that do not apply now: {measured}. They stay in the file and return when they apply again. The first: ${resting[0]!.reason}.`,
    },
  ];
}
