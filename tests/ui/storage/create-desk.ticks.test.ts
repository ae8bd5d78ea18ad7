import { expect, test } from 'vitest';
import { tickFileText } from '../../../src/files/tick-file';
import { tickLink } from '../../../src/files/tick-link';
import type { Tick } from '../../../src/plan/build-log';
import type { Plan } from '../../../src/plan/plan';
import type { TickList } from '../../../src/plan/tick-list';
import { createBrowser, planCalled, stateOf } from './fake-browser';

const tick: Tick = { step: 'wired', of: 'port', name: '3B-04', done: true, who: 'Ada', atMs: 1000 };
const listFor = (planId: string): TickList => ({
  format: 'voussoir-ticks',
  version: 1,
  planId,
  planName: 'Stage',
  ticks: [tick],
});
const fileFor = (planId: string) => ({ name: 'ticks.json', text: tickFileText(listFor(planId)), handle: null });
const hashFor = (planId: string) => new URL(tickLink('https://plan.example/', listFor(planId))!).hash;
const keep = (plan: Plan, key: string) => async (browser: ReturnType<typeof createBrowser>) =>
  browser.shelf.write({ key, planId: plan.id, name: plan.name, revision: '', keptAtMs: 1 }, JSON.stringify(plan));
const other: Plan = { ...planCalled('Other'), id: 'plan-2' };

test('a file of ticks is held for the bench, and no document is opened for it', async () => {
  const desk = createBrowser().openTab();
  await desk.actions.start('');
  const before = stateOf(desk);
  await desk.actions.openFile(fileFor(before.plan.id));
  expect(desk.store.getState()).toMatchObject({ ticks: listFor(before.plan.id), problem: null });
  expect(stateOf(desk).documentKey).toBe(before.documentKey);
  desk.actions.dropTicks();
  expect(desk.store.getState().ticks).toBeNull();
});

test.each(['file', 'link'])('a %s of ticks opens the kept plan that they belong to', async (way) => {
  const browser = createBrowser();
  const desk = browser.openTab();
  await desk.actions.start('');
  await keep(other, 'key-other')(browser);
  if (way === 'file') await desk.actions.openFile(fileFor('plan-2'));
  else await desk.actions.visit(hashFor('plan-2'));
  expect(stateOf(desk)).toMatchObject({ documentKey: 'key-other', plan: { name: 'Other' } });
  expect(desk.store.getState().ticks).toEqual(listFor('plan-2'));
});

test('ticks of a plan that is not kept leave the one on the bench as it is, and are held', async () => {
  const desk = createBrowser().openTab();
  await desk.actions.start('');
  const { documentKey } = stateOf(desk);
  await desk.actions.visit(hashFor('plan-9'));
  expect(stateOf(desk).documentKey).toBe(documentKey);
  expect(desk.store.getState().ticks?.planId).toBe('plan-9');
});

test('a link of ticks opens the program on the plan that they belong to, else on what is opened without it', async () => {
  const browser = createBrowser();
  await keep(other, 'key-other')(browser);
  await keep(planCalled('Newest'), 'key-newest')(browser);
  const first = browser.openTab();
  await first.actions.start(hashFor('plan-2'));
  expect(stateOf(first).documentKey).toBe('key-other');
  const second = browser.openTab();
  await second.actions.start(hashFor('plan-9'));
  expect(second.store.getState()).toMatchObject({ problem: null, ticks: { planId: 'plan-9' } });
  expect(stateOf(second).plan.name).toMatch(/Newest|Other/);
});

test('a damaged link of ticks is named, and so is a file of them that cannot stand', async () => {
  const desk = createBrowser().openTab();
  await desk.actions.start('');
  await desk.actions.visit(hashFor('p').slice(0, -5));
  expect(desk.store.getState().problem).toMatchObject({ kind: 'cut', from: 'link', name: 'ticks of the build log' });
  const file = fileFor('p');
  await desk.actions.openFile({ ...file, text: file.text.replace('"wired"', '"painted"') });
  expect(desk.store.getState()).toMatchObject({
    problem: { kind: 'invalid', path: 'ticks[0].step', from: 'file', name: 'ticks.json' },
    ticks: null,
  });
  // A sound file after it brings the plan back that was open.
  await desk.actions.openFile(fileFor(stateOf(desk).plan.id));
  expect(desk.store.getState()).toMatchObject({ problem: null, ticks: { ticks: [tick] } });
});
