import { expect, test } from 'vitest';
import { checkRuns } from '../../../src/calc/runs/check-runs';
import { computeRuns } from '../../../src/calc/runs/compute-runs';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import type { HandChange } from '../../../src/plan/hand-change';
import { plainPanel, plainProcessor, plainSignal } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { anchor, type PlainRuns, plainRuns } from './plain-runs';

const bands = [{ type: plainType(216), rows: 3 }];
const wall = plainSurface({ columns: 12, bands });
const check = (rest: PlainRuns = {}) => {
  const given = plainRuns({ wall, ...rest });
  const stage = wireStage(given);
  return checkRuns(given, stage, computeRuns(given, stage));
};
const named = (id: string, rest: PlainRuns = {}) => check(rest).find((found) => found.id === id);

test('checkRuns passes a wiring that keeps every limit, and offers the way that needs fewer ports', () => {
  expect(check().map(({ id, severity }) => [id, severity])).toEqual([
    ['runs.load.A', 'pass'],
    ['runs.reach.A', 'pass'],
    ['runs.ports.A', 'pass'],
    ['runs.breakouts.A', 'pass'],
    ['runs.offer-ports.A', 'offer'],
  ]);
});

test('checkRuns weighs the fullest port against what may be used of it', () => {
  const found = named('runs.load.A');
  expect(found).toMatchObject({ measured: 139_968, limit: 585_000, unit: 'px' });
  expect(found?.where).toEqual([{ kind: 'port', name: '1A-01' }]);
  expect(found?.values?.free?.value).toBeCloseTo(1 - 139_968 / 650_000, 12);
});

test('checkRuns stops at a port with more on it than it may carry', () => {
  // The pair of the coarser panel carries less than one of the finer panels that share the surface.
  const mixed = plainSurface({ columns: 2, bands: [...bands, { type: plainType(108), rows: 1 }] });
  const pair = { drivenBy: [{ processorId: 'proc', portPixels: 50_000 }] };
  const found = named('runs.load.A', { wall: mixed, panels: [plainPanel(216), plainPanel(108, pair)] });
  expect(found).toMatchObject({ severity: 'stop', measured: 46_656, limit: 45_000 });
  expect(found!.where.length).toBeGreaterThan(1);
  const one = plainSurface({
    columns: 1,
    bands: [
      { type: plainType(216), rows: 1 },
      { type: plainType(108), rows: 1 },
    ],
  });
  const single = named('runs.load.A', { wall: one, panels: [plainPanel(216), plainPanel(108, pair)] });
  expect(single).toMatchObject({ severity: 'stop', values: { over: { value: 1 } } });
  expect(single?.where).toEqual([{ kind: 'port', name: '1A-01' }]);
});

test('checkRuns watches entries above reach and names their panels', () => {
  const high = plainSurface({ columns: 2, bands, baseMm: 2200 });
  const found = named('runs.reach.A', { wall: high });
  expect(found).toMatchObject({ severity: 'watch', measured: 2200, limit: 2100, unit: 'mm' });
  expect(found?.where).toEqual([
    { kind: 'panel', name: 'C1 R1' },
    { kind: 'panel', name: 'C2 R1' },
  ]);
  const second = plainSurface({ letter: 'B', columns: 2, bands, baseMm: 2200 });
  const two = named('runs.reach.B', { surfaces: setOf(plainSurface({ columns: 3, bands }), second) });
  expect(two?.where[0]).toEqual({ kind: 'panel', name: 'B C1 R1' });
  const ceiling = plainSurface({ kind: 'ceiling', columns: 2, bands });
  expect(named('runs.reach.A', { wall: ceiling })).toBeUndefined();
});

// Common practice, no source: two breakouts of ten ports hang on one processor.
test('checkRuns counts ports and breakouts of the processor that has most', () => {
  expect(named('runs.ports.A')).toMatchObject({ measured: 12, limit: 20, values: { ports: { value: 12 } } });
  expect(named('runs.breakouts.A')).toMatchObject({ measured: 2, limit: 2 });
});

test('checkRuns stops where hand changes take more ports than there are, and offers a way that has enough', () => {
  const one = plainProcessor({}, { outlets: { kind: 'breakouts', breakoutId: 'box', most: 1 } });
  const ten = plainSurface({ columns: 10, bands });
  const handChanges: HandChange[] = [{ kind: 'cut', id: 'c', from: anchor(1, 1), to: anchor(1, 2) }];
  const given = { wall: ten, processors: [one], handChanges };
  const found = named('runs.ports.A', given);
  expect(found).toMatchObject({ severity: 'stop', measured: 11, limit: 10 });
  expect(found?.where).toEqual([{ kind: 'processor', name: '1' }]);
  expect(named('runs.breakouts.A', given)).toMatchObject({ severity: 'stop', measured: 2, limit: 1 });
  expect(found?.fix).toBeDefined();
  const fields = found?.fix?.command.name === 'set-fields' ? found.fix.command.args.fields : [];
  const after = { ...given, handChanges: fields[0]?.value as HandChange[] };
  expect(named('runs.ports.A', after)?.severity).toBe('pass');
  expect(check(after).filter(({ severity }) => severity === 'stop')).toEqual([]);
});

test('checkRuns has no breakouts to count on direct ports', () => {
  const direct = plainProcessor({}, { outlets: { kind: 'direct', ports: 16 } });
  expect(named('runs.breakouts.A', { processors: [direct] })).toBeUndefined();
});

test('checkRuns holds the longest run against the chain where it is stated', () => {
  expect(named('runs.chain.A')).toBeUndefined();
  const stated = { panels: [plainPanel(216, { chainPanels: 8 })] };
  expect(named('runs.chain.A', stated)).toMatchObject({ severity: 'pass', measured: 3, limit: 8 });
});

test('checkRuns clears an offer when its fix is applied', () => {
  const offer = named('runs.offer-ports.A');
  expect(offer).toMatchObject({ measured: 12, limit: 6 });
  expect(offer?.fix).toBeDefined();
  const fields = offer?.fix?.command.name === 'set-fields' ? offer.fix.command.args.fields : [];
  const after = check({ handChanges: fields[0]?.value as HandChange[] });
  expect(after.find(({ id }) => id === 'runs.offer-ports.A')).toBeUndefined();
  expect(after.filter(({ severity }) => severity === 'stop')).toEqual([]);
});

test('checkRuns watches hand changes at rest and says why the first one rests', () => {
  const handChanges: HandChange[] = [
    { kind: 'cut', id: 'c', from: anchor(1, 1), to: anchor(1, 2) },
    { kind: 'entry', id: 'e', at: anchor(99, 1) },
  ];
  const found = named('runs.resting', { handChanges });
  expect(found).toMatchObject({ severity: 'watch', measured: 1, limit: 0 });
  expect(found?.where).toEqual([{ kind: 'field', name: 'handChanges[1]' }]);
  expect(found?.sentence).toContain('no such column');
});

test('checkRuns leaves a surface without zones to the chapters that stop it, and still reads what exists', () => {
  const existingWiring = { source: '', rows: [{ panel: 'C1 R1', port: 'x', place: 1 }] };
  const ids = check({ signal: plainSignal({ processorId: null }), existingWiring }).map(({ id }) => id);
  expect(ids.every((id) => id.startsWith('runs.existing'))).toBe(true);
  expect(ids.length).toBeGreaterThan(0);
});

test('checkRuns gives every token of every sentence a figure', () => {
  const checks = [...check(), ...check({ wall: plainSurface({ columns: 2, bands, baseMm: 2200 }) })];
  for (const { sentence, values, measured, limit } of checks) {
    for (const [, token] of sentence.matchAll(/\{(\w+)\}/g)) {
      const figure = token === 'measured' ? measured : token === 'limit' ? limit : values?.[token!]?.value;
      expect(typeof figure, `${token} in '${sentence}'`).toBe('number');
    }
  }
});
