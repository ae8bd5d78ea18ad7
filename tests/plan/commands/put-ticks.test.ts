import { expect, test } from 'vitest';
import type { Tick } from '../../../src/plan/build-log';
import { putTicks } from '../../../src/plan/commands/put-ticks';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = { ...samplePlan('version-3'), log: { ticks: [] } };
const stands: Tick = { step: 'stands', of: 'column', name: 'A C38', done: true, who: 'Ada', atMs: 2000 };
const wired: Tick = { step: 'wired', of: 'port', name: '3B-04', done: true, who: 'Bo', atMs: 1000 };

test('put-ticks adds ticks to the log, the oldest first, and touches nothing else', () => {
  const after = taken(putTicks.apply(plan, { ticks: [stands, wired] }));
  expect(after.log.ticks).toEqual([wired, stands]);
  expect(changedGroups(plan, after)).toEqual(['log']);
});

test('put-ticks leaves the plan as it is where all ticks are there already', () => {
  const after = taken(putTicks.apply(plan, { ticks: [stands, wired] }));
  expect(putTicks.apply(after, { ticks: [{ ...stands }] })).toEqual({ plan: after });
  expect(taken(putTicks.apply(after, { ticks: [{ ...stands }] }))).toBe(after);
});

test('put-ticks keeps a tick that was taken back beside its taking back', () => {
  const back = { ...stands, done: false, atMs: 3000 };
  const after = taken(putTicks.apply(taken(putTicks.apply(plan, { ticks: [stands] })), { ticks: [back] }));
  expect(after.log.ticks).toEqual([stands, back]);
});

test('put-ticks refuses what is no tick', () => {
  expect(putTicks.apply(plan, { ticks: [{ ...stands, name: '' }] })).toMatchObject({ path: 'log.ticks[0].name' });
  expect(putTicks.apply(plan, { ticks: [{ ...stands, atMs: -1 }] })).toMatchObject({ path: 'log.ticks[0].atMs' });
});

test('put-ticks says what it does', () => {
  expect(putTicks.label(plan, { ticks: [stands] })).toBe("tick 'stands' of column A C38");
  expect(putTicks.label(plan, { ticks: [{ ...wired, done: false }] })).toBe("take back 'wired' of port 3B-04");
  expect(putTicks.label(plan, { ticks: [stands, wired] })).toBe('take in 2 ticks');
});
