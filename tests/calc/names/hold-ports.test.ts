import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { LocatedChain } from '../../../src/calc/names/locate-names';
import { runsAProcessor } from '../../../src/calc/ports/outlets';
import { assembleRuns } from '../../../src/calc/runs/assemble-runs';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import type { Returns } from '../../../src/plan/signal';
import { plainSignal } from '../ports/plain-items';
import { plainRuns } from '../runs/plain-runs';
import { plainSurface, plainType } from '../zones/plain-surface';

/** A wall of columns of three panels, each column a run from the floor up, on processors of two breakouts of ten ports. */
const wired = (columns: number, returns: Returns = 'none') => {
  const wall = plainSurface({ columns, bands: [{ type: plainType(216), rows: 3 }] });
  const given = plainRuns({ wall, signal: plainSignal({ returns }) });
  return { zones: wireStage(given).zones, surfaces: given.surfaces };
};
const column = (number: number) => ({ first: 3 * (number - 1), last: 3 * number - 1 });
const held = (name: string, at: { first: number; last: number }, returnName: string | null = null): LocatedChain => {
  return { ...at, name, returnName };
};
const gone = { first: -1, last: -1 };
const assemble = (columns: number, chains: readonly LocatedChain[] | null, returns: Returns = 'none') => {
  const { zones, surfaces } = wired(columns, returns);
  return assembleRuns(zones, surfaces, chains);
};
const named = (...given: Parameters<typeof assemble>) => assemble(...given).runs.map(({ port }) => port);
const paired = (...given: Parameters<typeof assemble>) =>
  assemble(...given).runs.map(({ port, returnPort }) => `${port} ${returnPort}`);

test('holdPorts keeps every name where nothing changed', () => {
  const chains = assemble(12, null).runs.map(({ port }, run) => held(port, column(run + 1)));
  expect(assemble(12, chains)).toEqual(assemble(12, null));
});

test('holdPorts keeps names with their columns, and gives a new column a port that was never held', () => {
  // Columns 2, 3 and 4 were columns 1, 2 and 3.
  const chains = [held('1A-01', column(2)), held('1A-02', column(3)), held('1A-03', column(4))];
  expect(named(4, chains)).toEqual(['1A-04', '1A-01', '1A-02', '1A-03']);
});

test('holdPorts leaves a name at rest to nobody while there are ports that were never held', () => {
  const rest = Array.from({ length: 9 }, (_, i) => held(`1A-0${i + 2}`, gone));
  expect(named(2, [held('1A-01', column(1)), ...rest])).toEqual(['1A-01', '1B-01']);
});

test('holdPorts gives held names again where no other port is left', () => {
  const rest = Array.from({ length: 20 }, (_, i) =>
    held(`1${i < 10 ? 'A' : 'B'}-${`${(i % 10) + 1}`.padStart(2, '0')}`, gone),
  );
  expect(named(2, rest)).toEqual(['1A-01', '1A-02']);
});

test('holdPorts lets go of a name on a processor that no longer drives its panels, and of a port that is not there', () => {
  expect(named(2, [held('7A-05', column(1)), held('1C-01', column(2)), held('1-02', column(2))])).toEqual([
    '1A-01',
    '1A-02',
  ]);
});

test('holdPorts counts the breakouts that are really in use', () => {
  expect(assemble(2, [held('1B-09', column(1)), held('1B-10', column(2))]).breakoutsInUse).toEqual([1]);
  expect(assemble(2, [held('1A-01', column(1)), held('1B-10', column(2))]).breakoutsInUse).toEqual([2]);
});

test('holdPorts keeps a run and its return together', () => {
  const chains = [held('1A-05', column(2), '1B-05')];
  expect(paired(3, chains, 'breakout')).toEqual(['1A-01 1B-01', '1A-05 1B-05', '1A-02 1B-02']);
});

test('holdPorts finds another return where the held one is not apart any more, and on another breakout', () => {
  // The run goes out on A and came back to A when a second port was all that was asked for.
  expect(paired(1, [held('1A-05', column(1), '1A-06')], 'breakout')).toEqual(['1A-05 1B-01']);
  expect(paired(1, [held('1A-05', column(1), '1A-06')], 'port')).toEqual(['1A-05 1A-06']);
});

test('holdPorts returns on another processor to it, and never takes the ports that its own runs need', () => {
  // Two zones of 20 columns at most: with returns every processor has ten runs and ten guests.
  const natural = assemble(20, null, 'processor');
  expect(new Set(natural.runs.map(({ returnProcessor }) => returnProcessor))).toEqual(new Set([1, 2]));
  const chains = natural.runs.slice(0, 5).map(({ port, returnPort }, run) => held(port, column(run + 1), returnPort));
  const after = assemble(20, chains, 'processor');
  expect(after.runs.slice(0, 5).map(({ returnPort }) => returnPort)).toEqual(
    chains.map(({ returnName }) => returnName),
  );
  for (const { port, returnProcessor } of after.runs) expect(port.startsWith(`${returnProcessor}`)).toBe(false);
});

test('holdPorts gives up held returns where the runs of that processor need its last ports', () => {
  // Three zones of ten runs. Both others returned to processor 1 while it had no runs of its own: it has twenty ports.
  const slot = (i: number) => `${i < 10 ? 'A' : 'B'}-${`${(i % 10) + 1}`.padStart(2, '0')}`;
  const chains = Array.from({ length: 20 }, (_, i) =>
    held(`${i < 10 ? 2 : 3}A-${`${(i % 10) + 1}`.padStart(2, '0')}`, column(11 + i), `1${slot(i)}`),
  );
  const { runs } = assemble(30, chains, 'processor');
  for (const { port } of runs.slice(0, 10)) expect(port).toMatch(/^1[AB]-\d\d$/);
  expect(runs.filter(({ returnProcessor }) => returnProcessor === 1)).toHaveLength(10);
  for (const { returnPort } of runs) expect(returnPort).toMatch(/^\d[AB]-\d\d$/);
});

const returnsOf = fc.constantFrom<Returns>('none', 'port', 'breakout', 'processor');
const name = fc
  .tuple(fc.constantFrom('1', '2', '3'), fc.constantFrom('A', 'B', 'C', ''), fc.integer({ min: 1, max: 11 }))
  .map(([processor, letter, port]) => `${processor}${letter}-${`${port}`.padStart(2, '0')}`);
const chain = fc.record({
  name,
  first: fc.integer({ min: -1, max: 71 }),
  last: fc.integer({ min: -1, max: 71 }),
  returnName: fc.option(name),
});

test('holdPorts gives every run ports of its own that its processor has, whatever names are held', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(chain, { selector: (each) => each.name, maxLength: 40 }),
      returnsOf,
      (chains, returns) => {
        const { zones, surfaces } = wired(24, returns);
        const { runs, breakoutsInUse } = assembleRuns(zones, surfaces, chains);
        const ports = runs.flatMap(({ port, returnPort }) => (returnPort === null ? [port] : [port, returnPort]));
        expect(new Set(ports).size).toBe(ports.length);
        expect(ports).toHaveLength(returns === 'none' ? 24 : 48);
        for (const port of ports) expect(port).toMatch(/^\d+[AB]-(0[1-9]|10)$/);
        for (const { port, zone, returnPort, returnProcessor } of runs) {
          expect(port.startsWith(`${zones[zone]!.zone.processor}`)).toBe(true);
          if (returnPort !== null) expect(returnPort.startsWith(`${returnProcessor}`)).toBe(true);
        }
        expect(Math.max(...breakoutsInUse)).toBeLessThanOrEqual(2);
        for (const { wiring, ports: own } of zones) expect(wiring.ports).toBeLessThanOrEqual(runsAProcessor(own));
      },
    ),
    { numRuns: 60 },
  );
});
