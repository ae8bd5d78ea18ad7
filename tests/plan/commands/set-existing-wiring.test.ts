import { expect, test } from 'vitest';
import { setExistingWiring } from '../../../src/plan/commands/set-existing-wiring';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('flat');
const wiring = { source: 'house.csv', rows: [{ panel: 'C1 R1', port: '1-01', place: 1 }] };

test('set-existing-wiring takes a wiring in, and forgets it', () => {
  const after = taken(setExistingWiring.apply(plan, { wiring }));
  expect(after.existingWiring).toEqual(wiring);
  expect(changedGroups(plan, after)).toEqual(['existingWiring']);
  expect(taken(setExistingWiring.apply(after, { wiring: null }))).toEqual(plan);
});

test('set-existing-wiring refuses a row that is none, at its place', () => {
  const rows = [...wiring.rows, { panel: 'C1 R2', port: '1-01', place: 0 }];
  expect(setExistingWiring.apply(plan, { wiring: { source: '', rows } })).toEqual({
    refused: 'at least 1',
    path: 'existingWiring.rows[1].place',
  });
});

test('set-existing-wiring takes 200,000 rows', () => {
  const rows = Array.from({ length: 200_000 }, (_, k) => ({ panel: `A C${k} R1`, port: '1-01', place: 1 }));
  expect(taken(setExistingWiring.apply(plan, { wiring: { source: 'large', rows } })).existingWiring!.rows).toHaveLength(
    200_000,
  );
});

test('set-existing-wiring says where it comes from', () => {
  expect(setExistingWiring.label(plan, { wiring })).toBe('read wiring house.csv');
  expect(setExistingWiring.label(plan, { wiring: null })).toBe('forget the wiring that exists');
});
