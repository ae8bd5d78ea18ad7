import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { findLevers } from '../../../src/calc/levers/find-levers';
import type { LeverAnswer, LeverStep, Topic } from '../../../src/calc/levers/lever';
import { leverDefinitions } from '../../../src/calc/levers/lever-definitions';
import { stopsOf } from '../../../src/calc/levers/stops-of';
import { applyCommand, type Command } from '../../../src/plan/commands';
import type { Plan } from '../../../src/plan/plan';
import type { BitDepth } from '../../../src/plan/primitives';
import { samplePlan } from '../../arbitraries/sample-plans';

const { evaluate } = createEvaluator();

function answerTo(plan: Plan, topic: Topic): LeverAnswer {
  const search = findLevers(plan, topic, evaluate);
  let turn = search.next();
  while (!turn.done) turn = search.next();
  return turn.value;
}

function owning(plan: Plan, itemId: string, owned: number, obtainable: number | null = 0): Plan {
  const stock = [...plan.wish.stock.filter((entry) => entry.itemId !== itemId), { itemId, owned, obtainable }];
  return { ...plan, wish: { ...plan.wish, stock } };
}

const flat = samplePlan('flat');
const panelId = flat.walls[0]!.bands[0]!.panelId;

/** The flat wall on a processor with breakouts, of which there are as few as of its breakouts: none. */
const onBoxes = onBreakouts();

function onBreakouts() {
  const { catalogue } = samplePlan('ring-feet');
  const processor = catalogue.processors.find(({ outlets }) => outlets.kind === 'breakouts')!;
  const breakout = catalogue.breakouts[0]!;
  const panels = flat.catalogue.panels.map((panel) => ({
    ...panel,
    data: { ...panel.data, drivenBy: [...panel.data.drivenBy, { processorId: processor.id, portPixels: null }] },
  }));
  const others = flat.catalogue.processors.filter(({ id }) => id !== processor.id);
  const plan: Plan = {
    ...flat,
    catalogue: { ...flat.catalogue, panels, processors: [...others, processor], breakouts: [breakout] },
    signal: { ...flat.signal, processorId: processor.id },
  };
  return { plan: owning(owning(plan, processor.id, 0), breakout.id, 0), processor, breakout };
}

test('findLevers of a plan that fits has nothing to change', () => {
  expect(answerTo(flat, 'signal')).toMatchObject({ stops: [], found: [], short: [] });
});

/** What is wrong with an answer: levers found that leave a stop, or that would do with less; others that would do. */
function wrongWith(plan: Plan, topic: Topic, { found, short }: LeverAnswer): string[] {
  const before = evaluate(plan);
  const stepsOf = (id: string) => leverDefinitions.find((definition) => definition.id === id)!.steps(plan, before);
  const fits = (command: Command) => {
    const outcome = applyCommand(plan, command);
    return !('refused' in outcome) && stopsOf(topic, evaluate(outcome.plan), outcome.plan).length === 0;
  };
  return [
    ...found.flatMap(({ id, step }) => {
      const size = ({ from, to }: LeverStep) => Math.abs(to.value - from.value);
      const less = stepsOf(id).filter((other) => size(other) < size(step));
      return [
        ...(fits(step.command) ? [] : [`${id} does not make it fit`]),
        ...(less.some(({ command }) => fits(command)) ? [`${id} would do with less`] : []),
      ];
    }),
    ...short.flatMap(({ id }) => (stepsOf(id).some(({ command }) => fits(command)) ? [`${id} makes it fit`] : [])),
  ];
}

test.each([
  ['panels', owning(flat, panelId, 50)],
  ['signal', owning(flat, flat.signal.processorId!, 0)],
  ['signal', { ...flat, signal: { ...flat.signal, freeShare: 0.95 } }],
] as const)('findLevers for %s: every lever found makes it fit, and less does not', (topic, plan) => {
  const answer = answerTo(plan, topic);
  expect(answer.stops.length).toBeGreaterThan(0);
  expect(answer.found.length).toBeGreaterThan(0);
  expect(wrongWith(plan, topic, answer)).toEqual([]);
});

test.each([null, 0])(
  'findLevers for processors and panels owned, %s more to be had: more of them make it fit',
  (more) => {
    const holding = (itemId: string) => owning(flat, itemId, 0, more);
    expect(answerTo(holding(flat.signal.processorId!), 'signal').found.map(({ id }) => id)).toContain('processors');
    expect(answerTo(holding(panelId), 'panels').found.map(({ id }) => id)).toContain('panels');
  },
);

test('findLevers with processors and breakouts short has both together, at the price of both', () => {
  const { plan, processor, breakout } = onBoxes;
  const answer = answerTo(plan, 'signal');
  const both = answer.found.find(({ id }) => id === 'signal-gear')!;
  expect(answer.short.map(({ id }) => id)).toEqual(expect.arrayContaining(['processors', 'breakouts']));
  const needed = (itemId: string) =>
    evaluate(plan).materials.results.lines.find((line) => line.itemId === itemId)!.needed;
  expect(both.cost).toBe(
    needed(processor.id) * processor.purchase.price! + needed(breakout.id) * breakout.purchase.price!,
  );
});

/** Six columns of four: small enough to try every step of every lever. */
function cutSmall(plan: Plan): Plan {
  const [wall] = plan.walls;
  const path = [{ ...wall!.path[0]!, columns: 6 }];
  return { ...plan, walls: [{ ...wall!, path, bands: [{ ...wall!.bands[0]!, rows: 4 }], holes: [] }] };
}

const shortStage = fc
  .record({
    frames: fc.constantFrom(24, 60, 120, 240),
    depthBits: fc.constantFrom<BitDepth>(8, 10, 12),
    pictures: fc.integer({ min: 1, max: 3 }),
    freeShare: fc.constantFrom(0, 0.1, 0.35, 0.9),
    panelsMost: fc.option(fc.integer({ min: 1, max: 12 })),
    reachMm: fc.constantFrom(0, 1000, 2100),
    zonesUp: fc.option(fc.integer({ min: 1, max: 3 })),
    owned: fc.integer({ min: 0, max: 3 }),
    panels: fc.integer({ min: 0, max: 24 }),
    more: fc.option(fc.integer({ min: 0, max: 2 })),
    base: fc.constantFrom(flat, onBoxes.plan).map(cutSmall),
  })
  .map(({ frames, depthBits, pictures, freeShare, panelsMost, reachMm, zonesUp, owned, panels, more, base }): Plan => {
    const processorId = base.signal.processorId!;
    const own = {
      surfaceId: base.walls[0]!.id,
      processorId,
      nodeId: null,
      zoneColumnsMost: null,
      returns: null,
      zonesUp,
    };
    const stage: Plan = {
      ...base,
      picture: { ...base.picture, base: { rate: { frames, seconds: 1 }, depthBits, pictures } },
      signal: { ...base.signal, freeShare, panelsMost, reachMm, bySurface: zonesUp === null ? [] : [own] },
    };
    return owning(owning(stage, processorId, owned, more), panelId, panels, more);
  });

test('findLevers of any short stage: a lever found makes it fit, less does not, and no other lever does', () => {
  fc.assert(
    fc.property(shortStage, fc.constantFrom<Topic>('signal', 'panels'), (plan, topic) => {
      expect(wrongWith(plan, topic, answerTo(plan, topic))).toEqual([]);
    }),
    { numRuns: 15 },
  );
});

test('findLevers for 14 panels short: fourteen more, or two columns fewer of eight', () => {
  // The sample has 8 columns of 8: 64 panels. With 50 there, 14 are short; a column holds 8, so two go: 48.
  const { found } = answerTo(owning(flat, panelId, 50), 'panels');
  expect(found.find(({ id }) => id === 'panels')!.step.to.value).toBe(64);
  expect(found.find(({ id }) => id === 'columns')!.step.to.value).toBe(6);
});
