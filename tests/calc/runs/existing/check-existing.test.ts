import { expect, test } from 'vitest';
import { computeRuns } from '../../../../src/calc/runs/compute-runs';
import { checkExisting } from '../../../../src/calc/runs/existing/check-existing';
import { wireStage } from '../../../../src/calc/runs/wire-stage';
import { plainPanel, plainProcessor, plainSignal } from '../../ports/plain-items';
import { plainSurface, plainType } from '../../zones/plain-surface';
import { type PlainRuns, plainRuns } from '../plain-runs';

const wall = plainSurface({ columns: 2, bands: [{ type: plainType(216), rows: 3 }] });
const rows = (...runs: string[][]) =>
  runs.flatMap((panels, run) => panels.map((panel, i) => ({ panel, port: `p${run + 1}`, place: i + 1 })));
const [one, two] = [
  ['C1 R1', 'C1 R2', 'C1 R3'],
  ['C2 R1', 'C2 R2', 'C2 R3'],
];
const checks = (runs: string[][], rest: PlainRuns = {}) => {
  const given = plainRuns({ wall, existingWiring: { source: 'as built', rows: rows(...runs) }, ...rest });
  const results = computeRuns(given, wireStage(given));
  return checkExisting(given, results.existing!, results);
};
const named = (id: string, ...given: Parameters<typeof checks>) => checks(...given).find((check) => check.id === id);

test('checkExisting passes a wiring that stands', () => {
  const found = checks([one!, two!]);
  expect(found.map(({ id, severity }) => [id, severity])).toEqual([
    ['runs.existing-rows', 'pass'],
    ['runs.existing-load', 'pass'],
    ['runs.existing-reach', 'pass'],
    ['runs.existing-ports', 'pass'],
  ]);
  expect(found[1]).toMatchObject({ measured: (3 * 46_656) / 650_000, limit: 0.9, unit: 'share' });
});

test('checkExisting stops at rows that make no sense, and names them', () => {
  const found = checks([[...one!, 'C9 R9'], ['C2 R1', 'C2 R3'], ['C1 R1']]);
  const stops = found.filter(({ severity }) => severity === 'stop');
  expect(stops.map(({ id, measured }) => [id, measured])).toEqual([
    ['runs.existing-unknown-panel', 1],
    ['runs.existing-panel-twice', 1],
    ['runs.existing-panel-missing', 1],
    ['runs.existing-apart', 1],
  ]);
  expect(stops.every(({ limit }) => limit === 0)).toBe(true);
  expect(stops.map(({ where }) => where[0]?.name)).toEqual(['C9 R9', 'C1 R1', 'C2 R2', 'C2 R3']);
  const twice = { source: '', rows: [...rows(one!, two!), { panel: 'C2 R3', port: 'p2', place: 3 }] };
  expect(named('runs.existing-place-gap', [], { existingWiring: twice })?.where).toEqual([
    { kind: 'port', name: 'p2' },
  ]);
});

test('checkExisting stops at a port with more on it than it may carry', () => {
  const weak = [plainProcessor({ sheetPixels: 150_000 })];
  const found = named('runs.existing-load', [one!, two!], { processors: weak });
  // 139,968 of 150,000 where 135,000 may be used.
  expect(found).toMatchObject({ severity: 'stop', measured: 139_968 / 150_000, limit: 0.9 });
  expect(found?.where).toHaveLength(2);
  // Both columns on one port, and one panel of them on another: the first alone is too much.
  const single = named('runs.existing-load', [[...one!, ...[...two!].reverse()].slice(0, 5), ['C2 R1']], {
    processors: weak,
  });
  expect(single).toMatchObject({ severity: 'stop', values: { over: { value: 1 } } });
  expect(single?.where).toEqual([{ kind: 'port', name: 'p1' }]);
});

test('checkExisting stops at a chain that is too long', () => {
  const found = named('runs.existing-chain', [one!, two!], { panels: [plainPanel(216, { chainPanels: 2 })] });
  expect(found).toMatchObject({ severity: 'stop', measured: 3, limit: 2 });
  const alone = named('runs.existing-chain', [one!], { panels: [plainPanel(216, { chainPanels: 2 })] });
  expect(alone).toMatchObject({ severity: 'stop', measured: 3, limit: 2 });
  expect(alone?.where).toEqual([{ kind: 'port', name: 'p1' }]);
  const longer = { panels: [plainPanel(216, { chainPanels: 3 })] };
  expect(named('runs.existing-chain', [one!, two!], longer)?.severity).toBe('pass');
});

test('checkExisting watches entries above reach', () => {
  const found = named('runs.existing-reach', [[...one!].reverse(), two!], { signal: plainSignal({ reachMm: 900 }) });
  expect(found).toMatchObject({ severity: 'watch', measured: 1000, limit: 900, values: { high: { value: 1 } } });
  expect(found?.where).toEqual([{ kind: 'port', name: 'p1' }]);
});

test('checkExisting sets its ports beside those of the plan', () => {
  const singles = [...one!, ...two!].map((panel) => [panel]);
  expect(named('runs.existing-ports', singles)).toMatchObject({ severity: 'offer', measured: 6, limit: 2 });
});

test('checkExisting cannot weigh without a processor', () => {
  const found = named('runs.existing-load', [one!, two!], { signal: plainSignal({ processorId: null }) });
  expect(found).toMatchObject({ severity: 'offer', measured: null, limit: null });
});
