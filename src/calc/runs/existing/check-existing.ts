import type { Check, Place } from '../../chapter';
import { panelsUnlimited } from '../../ports/panels-unlimited';
import { panelAt } from '../../surfaces/panel-at';
import type { RunsInputs } from '../compute-runs';
import type { ExistingFigures, ExistingRun, RunsResults } from '../run-result';

const mostPlaces = 50;
type Given = Pick<RunsInputs, 'surfaces' | 'ports' | 'signal'>;

/** A wiring that exists already, as it stands: its rows, its runs and what its ports carry, beside what the search does. */
export function checkExisting(given: Given, existing: ExistingFigures, results: RunsResults): Check[] {
  return [
    ...checkRows(given, existing),
    checkLoad(given, existing),
    ...checkChain(given, existing),
    checkReach(given, existing),
    compare(existing, results),
  ];
}

const portPlaces = (runs: readonly ExistingRun[]): Place[] =>
  runs.slice(0, mostPlaces).map(({ port }) => ({ kind: 'port', name: port }));

function checkRows({ surfaces }: Given, existing: ExistingFigures): Check[] {
  const named = (panels: readonly number[]): Place[] =>
    panels.slice(0, mostPlaces).map((panel) => ({ kind: 'panel', name: panelAt(surfaces, panel)!.name }));
  const faults: readonly { id: string; sentence: string; count: number; where: readonly Place[] }[] = [
    {
      id: 'unknown-panel',
      sentence: 'Rows of the wiring that exists name a panel that is not there: {measured}.',
      count: existing.unknownPanels.length,
      where: existing.unknownPanels.slice(0, mostPlaces).map((name) => ({ kind: 'panel', name })),
    },
    {
      id: 'panel-twice',
      sentence: 'Panels that stand more than once in the wiring that exists: {measured}.',
      count: existing.twicePanels.length,
      where: named(existing.twicePanels),
    },
    {
      id: 'panel-missing',
      sentence: 'Panels that are on no port of the wiring that exists: {measured}.',
      count: existing.missingPanels.length,
      where: named(existing.missingPanels),
    },
    {
      id: 'place-gap',
      sentence: 'Ports of the wiring that exists whose places leave one out or have one twice: {measured}.',
      count: existing.gapPorts.length,
      where: existing.gapPorts.slice(0, mostPlaces).map((name) => ({ kind: 'port', name })),
    },
    {
      id: 'apart',
      sentence: 'Panels that do not touch the one before them on their run, in the wiring that exists: {measured}.',
      count: existing.apartPanels.length,
      where: named(existing.apartPanels),
    },
  ];
  const found = faults.filter(({ count }) => count > 0);
  if (found.length === 0) {
    return [
      {
        id: 'runs.existing-rows',
        chapter: 'runs',
        severity: 'pass',
        measured: 0,
        limit: 0,
        unit: 'count',
        where: [],
        sentence: 'In the wiring that exists every panel stands once, each next to the one before it.',
      },
    ];
  }
  return found.map(({ id, sentence, count, where }) => ({
    id: `runs.existing-${id}`,
    chapter: 'runs',
    severity: 'stop',
    measured: count,
    limit: 0,
    unit: 'count',
    where,
    sentence,
  }));
}

function checkLoad({ signal }: Given, { runs }: ExistingFigures): Check {
  const loaded = runs.filter(({ usableShare }) => usableShare !== null);
  const over = loaded.filter(({ usableShare }) => usableShare! > 1);
  const fullest = loaded.reduce<ExistingRun | null>(
    (most, run) => (most === null || run.usableShare! > most.usableShare! ? run : most),
    null,
  );
  return {
    id: 'runs.existing-load',
    chapter: 'runs',
    severity: over.length > 0 ? 'stop' : fullest === null ? 'offer' : 'pass',
    measured: fullest?.share ?? null,
    limit: fullest === null ? null : 1 - signal.freeShare,
    unit: 'share',
    where: portPlaces(over.length > 0 ? over : fullest === null ? [] : [fullest]),
    sentence:
      over.length > 0
        ? 'Ports of the wiring that exists with too much on them: {over}, the fullest {measured} full where {limit} may be used.'
        : fullest === null
          ? 'What a port carries is not stated, so the wiring that exists cannot be weighed.'
          : 'The fullest port of the wiring that exists is {measured} full; {limit} may be used.',
    values: { over: { value: over.length, unit: 'count' } },
  };
}

function checkChain({ surfaces, ports }: Given, { runs }: ExistingFigures): Check[] {
  const limitOf = new Map(surfaces.surfaces.map(({ surfaceId }, i) => [surfaceId, ports.surfaces[i]!]));
  const stated = runs.flatMap((run) => {
    const { processor, panelsMost } = limitOf.get(run.surfaceId)!;
    return processor !== null && panelsMost < panelsUnlimited ? [{ run, panelsMost }] : [];
  });
  const first = stated[0];
  if (first === undefined) return [];
  const over = stated.filter(({ run, panelsMost }) => run.panels.length > panelsMost);
  const worst = stated.reduce(
    (most, next) => (next.run.panels.length - next.panelsMost > most.run.panels.length - most.panelsMost ? next : most),
    first,
  );
  return [
    {
      id: 'runs.existing-chain',
      chapter: 'runs',
      severity: over.length > 0 ? 'stop' : 'pass',
      measured: worst.run.panels.length,
      limit: worst.panelsMost,
      unit: 'count',
      where: portPlaces((over.length > 0 ? over : [worst]).map(({ run }) => run)),
      sentence:
        over.length > 0
          ? 'A run of the wiring that exists has {measured} panels; a chain there takes {limit}.'
          : 'Panels on the longest run of the wiring that exists: {measured}; a chain there takes {limit}.',
    },
  ];
}

function checkReach({ surfaces, signal }: Given, { runs }: ExistingFigures): Check {
  const high = runs.filter(({ inReach }) => !inReach);
  const hangs = new Set(surfaces.surfaces.flatMap(({ kind, surfaceId }) => (kind === 'ceiling' ? [surfaceId] : [])));
  const measured = runs
    .filter(({ surfaceId }) => !hangs.has(surfaceId))
    .reduce<number | null>((most, { entryHeightMm }) => Math.max(most ?? 0, entryHeightMm), null);
  return {
    id: 'runs.existing-reach',
    chapter: 'runs',
    severity: high.length > 0 ? 'watch' : 'pass',
    measured,
    limit: signal.reachMm,
    unit: 'mm',
    where: portPlaces(high),
    sentence:
      high.length > 0
        ? 'Entries of the wiring that exists above {limit}: {high}, the highest at {measured}.'
        : 'Every entry of the wiring that exists is within {limit}.',
    values: { high: { value: high.length, unit: 'count' } },
  };
}

function compare(existing: ExistingFigures, results: RunsResults): Check {
  return {
    id: 'runs.existing-ports',
    chapter: 'runs',
    severity: existing.ports > results.portsUsed ? 'offer' : 'pass',
    measured: existing.ports,
    limit: results.portsUsed,
    unit: 'count',
    where: [],
    sentence:
      existing.ports > results.portsUsed
        ? 'Ports of the wiring that exists: {measured}; the plan wires the stage on {limit}.'
        : 'Ports of the wiring that exists: {measured}; of the plan: {limit}.',
  };
}
