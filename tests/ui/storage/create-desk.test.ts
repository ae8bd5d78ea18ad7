import { expect, test } from 'vitest';
import { serialisePlan } from '../../../src/plan/serialise-plan';
import { somePlan } from '../state/fake-bench';
import { benchOf, createBrowser, planCalled, stateOf } from './fake-browser';

const nameText = (shelf: { readonly writes: readonly (readonly [string, string])[] }) =>
  JSON.parse(shelf.writes.at(-1)![1]).name;

test('a first visit opens the sample and keeps it at once', async () => {
  const { shelf, openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start('');
  expect(stateOf(desk)).toMatchObject({ documentKey: 'key-1', plan: { name: 'Sample' }, follows: false });
  expect(desk.store.getState()).toMatchObject({ firstVisit: true, kept: { kind: 'kept' } });
  expect(shelf.writes).toHaveLength(1);
});

test('a later visit opens the plan kept last, at the page that the address names', async () => {
  const { shelf, openTab } = createBrowser();
  shelf.put('old', serialisePlan(planCalled('Old')), 1);
  shelf.put('newer', serialisePlan(planCalled('Newer')), 2);
  const desk = openTab();
  await desk.actions.start('#page=power');
  expect(stateOf(desk)).toMatchObject({ documentKey: 'newer', plan: { name: 'Newer' }, page: 'power' });
  expect(desk.store.getState().firstVisit).toBe(false);
});

test('an address opens its plan; loading it writes nothing', async () => {
  const { shelf, clock, openTab } = createBrowser();
  shelf.put('old', serialisePlan(planCalled('Old')), 1);
  shelf.put('newer', serialisePlan(planCalled('Newer')), 2);
  const desk = openTab();
  await desk.actions.start('#plan=old');
  await clock.pass(10_000);
  expect(stateOf(desk).plan.name).toBe('Old');
  expect(shelf.writes).toEqual([]);
});

test('a change is written within a second, and is there after the tab was killed', async () => {
  const { clock, openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start('');
  benchOf(desk).actions.setField(['name'], 'Changed');
  await clock.pass(1000);
  const next = openTab();
  await next.actions.start(`#plan=${stateOf(desk).documentKey}`);
  expect(stateOf(next).plan.name).toBe('Changed');
});

test('stored text that fails to parse is kept as it is, with its reason and place', async () => {
  const { shelf, clock, openTab } = createBrowser();
  const broken = serialisePlan(planCalled('Old'))
    .replace('"people": 0', '"people": -1')
    .replace('"camerasAtOnce": 1', '"camerasAtOnce": "one"');
  shelf.put('old', broken);
  const desk = openTab();
  await desk.actions.start('#plan=old');
  expect(desk.store.getState().problem).toMatchObject({ kind: 'invalid', from: 'browser', text: broken });
  expect(desk.store.getState().problem?.path).toContain('wish.camerasAtOnce');
  await desk.actions.openBlank();
  await clock.pass(10_000);
  expect(await shelf.read('old')).toBe(broken);
});

test('an address under which nothing is kept says so and opens nothing', async () => {
  const { openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start('#plan=gone');
  expect(desk.store.getState()).toMatchObject({ bench: null, problem: { kind: 'missing', text: null } });
});

test.each(['full', 'refused'] as const)(
  'storage that is %s still opens the sample and says that nothing is kept',
  async (trouble) => {
    const { shelf, openTab } = createBrowser();
    shelf.refuse(trouble);
    const desk = openTab();
    await desk.actions.start('#plan=any');
    expect(stateOf(desk).plan.name).toBe('Sample');
    expect(desk.store.getState().kept).toMatchObject({ kind: 'failed', trouble });
  },
);

test('openFile opens a file as a document of its own and overwrites no kept plan', async () => {
  const { shelf, openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start('');
  const text = serialisePlan(planCalled('From a file'));
  await desk.actions.openFile({ name: 'x.json', text, handle: null });
  expect(stateOf(desk)).toMatchObject({ documentKey: 'key-2', plan: { name: 'From a file' } });
  expect(desk.store.getState().filed).toMatchObject({ fileName: 'x.json' });
  expect((await shelf.list()).map(({ key }) => key).toSorted()).toEqual(['key-1', 'key-2']);
});

test('openFile of a file that is kept already opens what is kept', async () => {
  const { shelf, openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start('');
  const text = serialisePlan(planCalled('From a file'));
  await desk.actions.openFile({ name: 'x.json', text, handle: null });
  await desk.actions.openSample();
  await desk.actions.openFile({ name: 'x.json', text, handle: null });
  expect(stateOf(desk).documentKey).toBe('key-2');
  expect(await shelf.list()).toHaveLength(3);
});

test.each([
  ['not json', '{', 'cut-short'],
  ['something else', '{"a": 1}', 'not-a-plan'],
  ['a newer plan', serialisePlan(somePlan).replace(/"version": \d+/, '"version": 99'), 'newer'],
])('openFile of %s is a problem that changes nothing', async (_name, text, kind) => {
  const { shelf, openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start('');
  const before = stateOf(desk);
  await desk.actions.openFile({ name: 'x.json', text, handle: null });
  expect(desk.store.getState().problem).toMatchObject({ kind, from: 'file', name: 'x.json', text });
  expect(stateOf(desk)).toBe(before);
  expect(shelf.writes).toHaveLength(1);
  desk.actions.closeProblem();
  benchOf(desk).actions.setField(['name'], 'Still mine');
  await desk.actions.flush();
  expect(nameText(shelf)).toBe('Still mine');
});

test('opening another plan writes the one that was open first', async () => {
  const { shelf, openTab } = createBrowser();
  const desk = openTab();
  await desk.actions.start('');
  benchOf(desk).actions.setField(['name'], 'Changed');
  await desk.actions.openBlank();
  expect(JSON.parse((await shelf.read('key-1'))!).name).toBe('Changed');
  expect(stateOf(desk)).toMatchObject({ page: 'wish', plan: { name: 'New plan' } });
});

test('a kept plan opens only after the one that was open is written', async () => {
  const { shelf, openTab } = createBrowser();
  shelf.put('old', serialisePlan(planCalled('Old')));
  const desk = openTab();
  await desk.actions.start('#plan=old');
  await desk.actions.openSample();
  benchOf(desk).actions.setField(['name'], 'Changed');
  await desk.actions.openKept('old');
  expect(nameText(shelf)).toBe('Changed');
});

test('visit turns the page, or opens the plan that the address names', async () => {
  const { shelf, openTab } = createBrowser();
  shelf.put('old', serialisePlan(planCalled('Old')), 1);
  const desk = openTab();
  await desk.actions.start('');
  await desk.actions.openSample();
  await desk.actions.visit(`#plan=${stateOf(desk).documentKey}&page=runs`);
  expect(stateOf(desk).page).toBe('runs');
  await desk.actions.visit('#plan=old&page=heat');
  expect(stateOf(desk)).toMatchObject({ documentKey: 'old', page: 'heat' });
});
