import { expect, test } from 'vitest';
import { offerWays } from '../../../src/calc/runs/offer-ways';
import type { WayFigures } from '../../../src/calc/runs/run-result';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import type { WayOfWiring } from '../../../src/plan/hand-change';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainRuns } from './plain-runs';

const figures = (way: WayOfWiring, rest: Partial<WayFigures> = {}): WayFigures => ({
  surfaceId: 'a',
  way,
  ports: 139,
  processorsShort: 0,
  fewest: 8,
  most: 9,
  fullestShare: 0.8,
  highestEntryMm: 2000,
  entriesOutOfReach: 0,
  figures: 2,
  cableMm: 1_000_000,
  chosen: false,
  ...rest,
});
const now = figures({ kind: 'columns' }, { chosen: true });
const given = plainRuns({ wall: plainSurface({ columns: 4, bands: [{ type: plainType(216), rows: 3 }] }) });
const { zones } = wireStage(given);
const offer = (...ways: WayFigures[]) =>
  offerWays({ surfaceId: 'a', ports: 139, portsLeast: 120, ways }, { kind: 'wall', letter: 'A' }, zones, [], given);
const split: WayOfWiring = { kind: 'split', aboveRow: 2, wide: 1 };

test('offerWays says how many ports fewer a way needs', () => {
  const [found, ...more] = offer(now, figures(split, { ports: 125 }));
  expect(more).toEqual([]);
  expect(found).toMatchObject({
    id: 'runs.offer-ports.A',
    severity: 'offer',
    measured: 139,
    limit: 125,
    unit: 'count',
  });
  expect(found?.sentence).toBe(
    'Splitting above row {row} on wall A needs {fewer} ports fewer: {limit} instead of {measured}.',
  );
  expect(offer(now, figures(split, { ports: 138 }))[0]?.sentence).toContain('needs one port fewer');
  expect(found?.values).toMatchObject({ row: { value: 2 }, fewer: { value: 14 } });
});

test('offerWays offers on every count by itself', () => {
  const ids = (rest: Partial<WayFigures>) => offer(now, figures(split, rest)).map(({ id }) => id);
  expect(ids({ fullestShare: 0.74 })).toEqual(['runs.offer-free.A']);
  expect(ids({ figures: 1 })).toEqual(['runs.offer-figures.A']);
  expect(ids({ cableMm: 890_000 })).toEqual(['runs.offer-cable.A']);
  // Not worth a word: a share by less than 5 %, cable by less than 10 %.
  expect(ids({ fullestShare: 0.76, cableMm: 910_000 })).toEqual([]);
});

test('offerWays offers no way that takes as little cable as the one there is: none', () => {
  expect(offer({ ...now, cableMm: 0 }, figures(split, { cableMm: 0 }))).toEqual([]);
});

test('offerWays offers nothing that breaks a limit which is kept now', () => {
  expect(offer(now, figures(split, { ports: 100, entriesOutOfReach: 1 }))).toEqual([]);
  expect(offer(now, figures(split, { ports: 100, processorsShort: 1 }))).toEqual([]);
});

test('offerWays takes the best on the count, the first of equals', () => {
  const others = [
    figures(split, { ports: 130 }),
    figures({ kind: 'rows' }, { ports: 125 }),
    figures({ kind: 'free' }, { ports: 125 }),
  ];
  expect(offer(now, ...others)[0]?.sentence).toContain('along rows');
});

test('offerWays carries a fix where the zones know the way', () => {
  const folded: WayOfWiring = { kind: 'folded', wide: 2 };
  expect(offer(now, figures(folded, { ports: 2 }))[0]?.fix?.label).toBe('Use it');
  expect(offer(now, figures({ kind: 'free' }, { ports: 2 }))[0]?.fix).toBeUndefined();
});

test('offerWays without a wiring offers nothing', () => {
  expect(offer()).toEqual([]);
});
