import { expect, test } from 'vitest';
import { comparePlans } from '../../../src/calc/compare/compare-plans';
import { createEvaluator } from '../../../src/calc/evaluate';
import { namesOfEvaluation } from '../../../src/calc/names/names-of-evaluation';
import { heldNames } from '../../../src/plan/held-names';
import { samplePlan } from '../../arbitraries/sample-plans';
import { chainsByContent, followed, issue, widenLeft } from './issue';

const evaluator = createEvaluator();
const { evaluate } = evaluator;
const samples = ['flat', 'horseshoe', 'ring-feet'] as const;

test('namesOfEvaluation names every processor, port and circuit once, as the schema takes them', () => {
  const plan = samplePlan('horseshoe');
  const evaluation = evaluate(plan);
  const names = namesOfEvaluation(evaluation, plan.walls, null);
  expect(heldNames.safeParse(names).error?.issues).toBeUndefined();
  expect(names.processors.map(({ number }) => number)).toEqual(
    evaluation.zones.results.zones.map(({ processor }) => processor),
  );
  expect(names.ports.map(({ name }) => name)).toEqual(evaluation.runs.results.runs.map(({ port }) => port));
  expect(names.circuits.map(({ name }) => name)).toEqual(evaluation.power.results.circuits.map(({ name }) => name));
});

test('namesOfEvaluation anchors a run by its first and its last panel, and its return the other way round', () => {
  const plan = samplePlan('flat');
  const returning = { ...plan, signal: { ...plan.signal, returns: 'port' as const } };
  const [run] = evaluate(returning).runs.results.runs;
  const [out, back] = namesOfEvaluation(evaluate(returning), returning.walls, null).ports;
  expect([out!.name, back!.name]).toEqual([run!.port, run!.returnPort]);
  expect([back!.first, back!.last]).toEqual([out!.last, out!.first]);
  expect(out!.first).toMatchObject({ surfaceId: plan.walls[0]!.id, segmentId: 'straight', column: 1 });
});

test.each(samples)('issuing %s and changing nothing gives the same names and an empty comparison', (name) => {
  const plan = samplePlan(name);
  const issued = issue(plan, evaluator);
  expect(comparePlans(followed(plan, evaluator), followed(issued, evaluator))).toEqual([]);
  const [free, held] = [evaluate(plan), evaluate(issued)];
  for (const chapter of ['zones', 'runs', 'power', 'materials'] as const) {
    expect(held[chapter].results).toEqual(free[chapter].results);
  }
  const again = issue(issued, evaluator);
  expect(again.names).toEqual(issued.names);
});

test.each(samples)('issuing %s and evaluating what was issued gives the names that were issued', (name) => {
  const issued = issue(samplePlan(name), evaluator);
  const { content } = issued.revisions[0]!;
  const names = namesOfEvaluation(evaluate({ ...issued, ...content }), content.walls, content.names);
  expect(names).toEqual(issued.names);
});

test.each(['horseshoe', 'ring-feet'] as const)(
  'issuing %s and adding a column on the left keeps the name of every run and circuit that is untouched',
  (name) => {
    const issued = issue(samplePlan(name), evaluator);
    const [before, after] = [followed(issued, evaluator), followed(widenLeft(issued), evaluator)];
    const [then, now] = [chainsByContent(before), chainsByContent(after)];
    let kept = 0;
    for (const [content, run] of then.ports) {
      const same = now.ports.get(content);
      const processorOf = (plan: typeof before, zone: number) => plan.zones.results.zones[zone]!.processor;
      if (same === undefined || processorOf(before, run.zone) !== processorOf(after, same.zone)) continue;
      expect(same.port).toBe(run.port);
      kept += 1;
    }
    // Most of them, though a column more shifts the edges between processors.
    expect(kept / then.ports.size).toBeGreaterThan(0.5);
    for (const [content, circuit] of then.circuits) {
      const same = now.circuits.get(content);
      if (same?.distro === circuit.distro) expect(same.name).toBe(circuit.name);
    }
    // As many names for other runs as there would be without the hold: none at all moves to another run.
    const contentThen = new Map([...then.ports].map(([content, { port }]) => [port, content]));
    const strangers = [...now.ports].filter(([content, { port }]) => {
      const was = contentThen.get(port);
      return was !== undefined && !was.split(', ').some((panel) => content.split(', ').includes(panel));
    });
    expect(strangers).toEqual([]);
  },
);

test('names at rest stay held when another revision is issued, and return with their panels', () => {
  const issued = issue(samplePlan('horseshoe'), evaluator);
  const wide = issue(widenLeft(issued), evaluator);
  const narrow = { ...issued, names: wide.names, revisions: wide.revisions };
  const resting = narrow.names!.ports.filter(({ first }) => first.segmentId === 'more-on-the-left');
  expect(resting.length).toBeGreaterThan(0);
  const narrowed = issue(narrow, evaluator);
  for (const { name } of resting) {
    expect(evaluate(narrow).runs.results.runs.map(({ port }) => port)).not.toContain(name);
    expect(narrowed.names!.ports.map((each) => each.name)).toContain(name);
  }
  const back = evaluate({ ...widenLeft(issued), names: narrowed.names }).runs.results;
  const ports = new Set(back.runs.map(({ port }) => port));
  for (const { name } of resting) expect(ports).toContain(name);
});
