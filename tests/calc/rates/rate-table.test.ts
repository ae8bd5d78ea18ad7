import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { rateTable, rowsOfRates } from '../../../src/calc/rates/rate-table';
import { applyCommand } from '../../../src/plan/commands';
import { draftCeiling } from '../../../src/plan/draft-ceiling';
import type { Mode } from '../../../src/plan/picture';
import type { Plan } from '../../../src/plan/plan';
import type { BitDepth } from '../../../src/plan/primitives';
import { samplePlan } from '../../arbitraries/sample-plans';

const plan = samplePlan('flat');

test('rowsOfRates has the usual nine and the own rate once, slowest first', () => {
  const own = {
    ...plan,
    picture: { ...plan.picture, base: { ...plan.picture.base, rate: { frames: 24_000, seconds: 1001 } } },
  };
  const hertz = rowsOfRates(own).map(({ frames, seconds }) => frames / seconds);
  expect(hertz).toEqual([...hertz].sort((a, b) => a - b));
  expect(hertz.filter((rate) => Math.abs(rate - 23.976) < 0.001)).toHaveLength(1);
  expect(hertz).toEqual(expect.arrayContaining([24, 25, 30_000 / 1001, 30, 48, 50, 60, 100, 120]));
});

test('rateTable never carries more panels on a port at a faster rate or a greater depth', () => {
  const cells = [...rateTable(plan, null, createEvaluator().evaluate)];
  expect(cells).toHaveLength(rowsOfRates(plan).length * 3);
  for (const a of cells) {
    for (const b of cells) {
      const faster = a.mode.rate.frames / a.mode.rate.seconds >= b.mode.rate.frames / b.mode.rate.seconds;
      if (faster && a.mode.depthBits >= b.mode.depthBits) expect(a.panelsAPort!).toBeLessThanOrEqual(b.panelsAPort!);
    }
  }
  expect(cells.filter(({ current }) => current)).toHaveLength(1);
});

/** A small wall and a ceiling, the ceiling at a depth of its own, and a rate to be served beside what runs. */
function twoSurfaces(): Plan {
  const [wall] = plan.walls;
  const at = (frames: number, depthBits: BitDepth): Mode => ({ rate: { frames, seconds: 1 }, depthBits, pictures: 2 });
  return {
    ...plan,
    wish: { ...plan.wish, stock: [{ itemId: plan.signal.processorId!, owned: 5, obtainable: 0 }] },
    walls: [{ ...wall!, path: [{ ...wall!.path[0]!, columns: 5 }], holes: [] }],
    ceilings: [draftCeiling(plan, 'rush-39')],
    picture: {
      base: at(48, 10),
      bySurface: [{ surfaceId: draftCeiling(plan, 'rush-39').id, mode: at(24, 8) }],
      alsoServe: [{ id: 'fast', mode: at(120, 12), surfaceIds: null }],
    },
  };
}

test('rateTable comes to what the plan comes to when a cell is kept and nothing else is to be served', () => {
  const stage = twoSurfaces();
  const alone = { ...stage, picture: { ...stage.picture, alsoServe: [] } };
  const { evaluate } = createEvaluator();
  for (const surfaceIds of [null, [stage.ceilings[0]!.id], [stage.walls[0]!.id]]) {
    const asked = (surfaceId: string) => surfaceIds?.includes(surfaceId) ?? true;
    const cells = [...rateTable(stage, surfaceIds, evaluate)];
    expect(cells.some(({ stop }) => stop === null)).toBe(true);
    expect(cells.some(({ stop }) => stop !== null)).toBe(true);
    for (const cell of cells) {
      const outcome = applyCommand(alone, { name: 'set-mode', args: { surfaceIds, mode: cell.mode } });
      if ('refused' in outcome) throw new Error(outcome.refused);
      const { ports, runs, zones, checks } = evaluate(outcome.plan);
      const of = <One extends { readonly surfaceId: string }>({ surfaces }: { readonly surfaces: readonly One[] }) =>
        surfaces.filter(({ surfaceId }) => asked(surfaceId));
      expect(cell.mode.pictures).toBe(2);
      expect(cell.panelsAPort).toBe(
        Math.min(...of(ports.results).flatMap(({ byType }) => byType.map(({ panelsAPort }) => panelsAPort))),
      );
      expect(cell.ports).toBe(of(runs.results).reduce((sum, one) => sum + one.ports, 0));
      expect(cell.processors).toBe(of(zones.results).reduce((sum, one) => sum + one.zones, 0));
      const counted = ['picture', 'ports', 'zones', 'runs', 'wish'];
      const stops = checks.filter(({ severity, chapter }) => severity === 'stop' && counted.includes(chapter));
      expect(cell.stop?.id ?? null).toBe(stops.find(({ id }) => id !== 'wish.budget')?.id ?? null);
    }
  }
});

const asked = [
  { frames: 24, seconds: 1 },
  { frames: 25, seconds: 1 },
  { frames: 30_000, seconds: 1001 },
  { frames: 48, seconds: 1 },
  { frames: 60, seconds: 1 },
];

// Several rates asked of one stage. 3840 Hz is 160 x 24, 80 x 48 and 64 x 60, but 153.6 x 25 and 128.128 x 30000/1001: panels that
// lock go down to a whole multiple, fixed ones are out of step.
test.each([
  ['locked', []],
  ['fixed', [25, 30_000 / 1001]],
] as const)(
  'rateTable of one stage at 24, 25, 29.97, 48 and 60: %s panels of 3840 Hz are out of step at %j',
  (refreshMode, odd) => {
    const stage = twoSurfaces();
    const panels = stage.catalogue.panels.map((panel) => ({
      ...panel,
      light: { ...panel.light, refreshHz: 3840, refreshMode },
    }));
    const single = { ...stage.picture, base: { ...stage.picture.base, pictures: 1 }, bySurface: [] };
    const cells = [
      ...rateTable(
        { ...stage, picture: single, catalogue: { ...stage.catalogue, panels } },
        null,
        createEvaluator().evaluate,
      ),
    ];
    const inQuestion = cells.filter(({ mode: { rate } }) =>
      asked.some(({ frames, seconds }) => frames * rate.seconds === rate.frames * seconds),
    );
    // Each rate at 8, 10 and 12 bit.
    expect(inQuestion).toHaveLength(15);
    const outOfStep = inQuestion
      .filter(({ refresh }) => refresh !== null)
      .map(({ mode: { rate } }) => rate.frames / rate.seconds);
    expect([...new Set(outOfStep)]).toEqual(odd);
    // What would have to change is said of every cell that does not fit, and every cell that fits has its ports and processors.
    for (const { stop, ports, processors, panelsAPort } of inQuestion) {
      if (stop === null) expect(Math.min(ports, processors, panelsAPort!)).toBeGreaterThan(0);
      else expect(stop.sentence.length).toBeGreaterThan(0);
    }
  },
);
