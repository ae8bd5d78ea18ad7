import { expect, test } from 'vitest';
import { encodeShare } from '../../../src/files/share-link';
import { emptyBuildLog } from '../../../src/plan/build-log';
import { serialisePlan } from '../../../src/plan/serialise-plan';
import { isCopyKey } from '../../../src/ui/state/copy-key';
import { benchOf, createBrowser, planCalled, stateOf } from './fake-browser';

const shared = planCalled('Sent by link');
const link = `#share=${encodeShare(shared)}`;

test('a link opens as a read-only copy under a key of its own, is kept at once and replaces nothing', async () => {
  const { shelf, openTab } = createBrowser();
  shelf.put('mine', serialisePlan(shared));
  const desk = openTab();
  await desk.actions.start(link);
  const { documentKey, plan } = stateOf(desk);
  expect(isCopyKey(documentKey)).toBe(true);
  expect(plan).toEqual(shared);
  expect((await shelf.list()).map(({ key }) => key)).toEqual(expect.arrayContaining(['mine', documentKey]));
  expect(shelf.writes.map(([key]) => key)).toEqual([documentKey]);
  expect(desk.store.getState()).toMatchObject({ firstVisit: false, problem: null });
});

test('a copy refuses what plans, says how to get on, and takes ticks', async () => {
  const { openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start(link);
  const bench = benchOf(desk).actions;
  expect(bench.setField(['name'], 'Changed')).toMatchObject({ refused: expect.stringContaining('read-only copy') });
  const tick = { step: 'wired', of: 'port', name: '1A-01', done: true, who: 'Ada', atMs: 1 } as const;
  expect(bench.dispatch({ name: 'put-ticks', args: { ticks: [tick] } })).toEqual({ done: true });
  expect(stateOf(desk).plan).toEqual({ ...shared, log: { ticks: [tick] } });
});

test('opening a link twice gives the same copy with its ticks, in this tab and after a reload', async () => {
  const { shelf, openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start('');
  await desk.actions.visit(link);
  const { documentKey } = stateOf(desk);
  const tick = { step: 'stands', of: 'column', name: 'C1', done: true, who: 'Ada', atMs: 1 } as const;
  benchOf(desk).actions.dispatch({ name: 'put-ticks', args: { ticks: [tick] } });
  await desk.actions.visit(`${link}&page=runs&panel=C3-R2`);
  expect(stateOf(desk)).toMatchObject({ documentKey, page: 'runs', selection: { kind: 'panel', name: 'C3 R2' } });
  await desk.actions.flush();
  const later = openTab();
  await later.actions.start(link);
  expect(stateOf(later)).toMatchObject({ documentKey, plan: { log: { ticks: [tick] } } });
  expect(await shelf.list()).toHaveLength(2);
});

test('makeMine copies the plan with its ticks into a document of its own with another plan id', async () => {
  const { shelf, openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start(link);
  const copy = stateOf(desk).documentKey;
  await desk.actions.makeMine();
  const mine = stateOf(desk);
  expect(isCopyKey(mine.documentKey)).toBe(false);
  expect(mine.plan).toEqual({ ...shared, id: mine.plan.id });
  expect(mine.plan.id).not.toBe(shared.id);
  expect(benchOf(desk).actions.setField(['name'], 'Mine')).toEqual({ done: true });
  await desk.actions.flush();
  expect(JSON.parse((await shelf.read(copy))!).name).toBe(shared.name);
});

test('a link works where nothing can be kept', async () => {
  const { shelf, openTab } = createBrowser();
  shelf.refuse('refused');
  const desk = openTab();
  await desk.actions.start(link);
  expect(stateOf(desk).plan).toEqual(shared);
  expect(desk.store.getState().kept).toMatchObject({ kind: 'failed' });
});

test.each([
  ['cut', link.slice(0, -20)],
  ['damaged', `${link}.`],
  ['cut', '#share='],
])('a link that is %s is a problem that leaves the open plan alone', async (kind, hash) => {
  const { shelf, openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start('');
  const before = stateOf(desk);
  await desk.actions.visit(hash);
  expect(desk.store.getState().problem).toMatchObject({ kind, from: 'link' });
  expect(stateOf(desk)).toBe(before);
  expect(shelf.writes).toHaveLength(1);
  const first = openTab();
  await first.actions.start(hash);
  expect(first.store.getState()).toMatchObject({ bench: null, problem: { kind } });
});

test('a link to an item opens the kept plan of that id and picks the item', async () => {
  const { shelf, openTab } = createBrowser();
  const wanted = { ...planCalled('Wanted'), id: 'wanted' };
  shelf.put('other', serialisePlan({ ...planCalled('Other'), id: 'other' }), 9);
  shelf.put('k', serialisePlan(wanted), 1);
  const desk = openTab();
  await desk.actions.start('#of=wanted&panel=C3-R2');
  expect(stateOf(desk)).toMatchObject({ documentKey: 'k', selection: { kind: 'panel', name: 'C3 R2' } });
  const run = stateOf(desk).evaluation!.runs.results.runs[0]!.port;
  await desk.actions.visit(`#of=wanted&port=${run}`);
  expect(stateOf(desk).selection).toMatchObject({ kind: 'run', name: run });
  const circuit = stateOf(desk).evaluation!.power.results.circuits[0]!.name;
  await desk.actions.visit(`#of=wanted&circuit=${circuit}`);
  expect(stateOf(desk).selection).toMatchObject({ kind: 'circuit', name: circuit });
});

test('a link to an item goes to the own plan before the shared copy, even while the copy is open', async () => {
  const { shelf, openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start(link);
  const copy = stateOf(desk).documentKey;
  await desk.actions.visit(`#of=${shared.id}&panel=C1-R1`);
  expect(stateOf(desk).documentKey).toBe(copy);
  shelf.put('own', serialisePlan(shared), 0);
  await desk.actions.visit(`#of=${shared.id}&panel=C1-R2`);
  expect(stateOf(desk)).toMatchObject({ documentKey: 'own', selection: { name: 'C1 R2' } });
});

test('a link to an item of a plan that is not kept says how to get it', async () => {
  const { openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start('#of=elsewhere&panel=C1-R1');
  expect(desk.store.getState()).toMatchObject({ bench: null, problem: { kind: 'not-kept', from: 'link', text: null } });
});

test('a link carries no log: whoever opens it begins with an empty one', async () => {
  const { openTab } = createBrowser();
  const tick = { step: 'wired', of: 'port', name: '1A-01', done: true, who: 'Ada', atMs: 1 } as const;
  const desk = openTab();
  await desk.actions.start(`#share=${encodeShare({ ...shared, log: { ticks: [tick] } })}`);
  expect(stateOf(desk).plan.log).toEqual(emptyBuildLog);
});
