import { expect, test } from 'vitest';
import { compareRevisions, panelsChangedSince } from '../../../src/calc/compare/compare-revisions';
import { createEvaluator } from '../../../src/calc/evaluate';
import { findBuilds } from '../../../src/calc/finder/find-builds';
import { findLevers } from '../../../src/calc/levers/find-levers';
import { rateTable } from '../../../src/calc/rates/rate-table';
import { type CrewSetAsked, makeCrewSet } from '../../../src/files/make-crew-set';
import { type SweepRequest, sweepSteps } from '../../../src/ui/state/sweeps';
import { samplePlan } from '../../arbitraries/sample-plans';
import { issue } from '../../calc/names/issue';

const plan = samplePlan('flat');
const builds = findBuilds(plan)[0]!.builds.slice(0, 1);

function outcome(steps: Generator<unknown, unknown>): { readonly items: unknown[]; readonly answer: unknown } {
  const items: unknown[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done) return { items, answer: step.value };
    items.push(step.value);
  }
}

const run = (request: SweepRequest) => outcome(sweepSteps(request, plan, createEvaluator().evaluate));

test('sweepSteps gives the same as the searches of the core', () => {
  const { evaluate } = createEvaluator();
  expect(run({ name: 'builds', asked: null })).toEqual({ items: [], answer: findBuilds(plan) });
  expect(run({ name: 'rates', asked: null })).toEqual(outcome(rateTable(plan, null, evaluate)));
  expect(run({ name: 'levers', asked: 'panels' })).toEqual(outcome(findLevers(plan, 'panels', evaluate)));
});

test('sweepSteps compares two states of the plan and marks what changed since one', () => {
  const evaluator = createEvaluator();
  const issued = issue(plan, evaluator);
  const [wall] = issued.walls;
  const higher = { ...issued, walls: [{ ...wall!, bands: [{ ...wall!.bands[0]!, rows: 9 }] }] };
  const { id } = issued.revisions[0]!;
  const asked = { from: id, to: null };
  const steps = (request: SweepRequest) => outcome(sweepSteps(request, higher, evaluator.evaluate)).answer;
  expect(steps({ name: 'changes', asked })).toEqual(compareRevisions(higher, asked, evaluator.evaluate));
  expect(steps({ name: 'marks', asked: id })).toEqual(panelsChangedSince(higher, id, evaluator.evaluate));
});

test('sweepSteps lays out the crew set, a list of its parts first', () => {
  const asked: CrewSetAsked = {
    paper: 'a4',
    inks: 'black',
    display: { lengths: 'metric', locale: 'en-GB', currency: 'EUR' },
    date: '2026-11-25',
    address: null,
    parts: ['cover', 'bill'],
    fonts: null,
  };
  const { items, answer } = run({ name: 'crew', asked });
  expect(structuredClone(items)).toEqual(items);
  expect(items).toEqual(outcome(makeCrewSet(asked, plan, createEvaluator().evaluate(plan))).items);
  expect(items[0]).toMatchObject({ done: 0, parts: expect.arrayContaining([{ id: 'cover', title: 'Cover' }]) });
  expect(answer).toBeNull();
});

test.each<SweepRequest>([
  { name: 'builds', asked: null },
  { name: 'weights', asked: builds },
  { name: 'rates', asked: [plan.walls[0]!.id] },
  { name: 'levers', asked: 'signal' },
  { name: 'sizes', asked: null },
])('all that $name yields and answers can be posted between worker and page, and is small', (request) => {
  const said = run(request);
  expect(structuredClone(said)).toEqual(said);
  expect(JSON.stringify(said).length).toBeLessThan(200_000);
});
