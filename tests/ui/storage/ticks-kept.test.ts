import { expect, test } from 'vitest';
import { encodeShare } from '../../../src/files/share-link';
import type { Tick } from '../../../src/plan/build-log';
import { parsePlan } from '../../../src/plan/parse-plan';
import type { Plan } from '../../../src/plan/plan';
import { serialisePlan } from '../../../src/plan/serialise-plan';
import { ticksKept } from '../../../src/ui/storage/ticks-kept';
import { benchOf, createBrowser, planCalled, stateOf } from './fake-browser';

const tick: Tick = { step: 'wired', of: 'port', name: '1A-01', done: true, who: 'Ada', atMs: 1 };
const later: Tick = { ...tick, name: '1A-02', atMs: 2 };
const withTicks = (...ticks: Tick[]): Plan => ({ ...planCalled('Stage'), log: { ticks } });

test('ticksKept gathers the ticks of every document of a plan, each once, and none of other plans', async () => {
  const { shelf } = createBrowser();
  shelf.put('one', serialisePlan(withTicks(later)));
  shelf.put('two', serialisePlan(withTicks(tick, later)));
  shelf.put('strange', serialisePlan({ ...withTicks({ ...tick, name: '9A-01' }), id: 'another' }));
  shelf.put('broken', '{');
  expect(await ticksKept(shelf, parsePlan, planCalled('').id)).toEqual([tick, later]);
});

test('a newer copy of a plan begins with what this browser ticked on an earlier one', async () => {
  const desk = createBrowser().openTab();
  await desk.actions.start(`#share=${encodeShare(planCalled('As issued on Monday'))}`);
  benchOf(desk).actions.dispatch({ name: 'put-ticks', args: { ticks: [tick] } });
  const monday = stateOf(desk).documentKey;
  await desk.actions.visit(`#share=${encodeShare(planCalled('As issued on Tuesday'))}`);
  expect(stateOf(desk)).toMatchObject({ plan: { name: 'As issued on Tuesday', log: { ticks: [tick] } } });
  expect(stateOf(desk).documentKey).not.toBe(monday);
});
