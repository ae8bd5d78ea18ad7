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

test('rowsOfRates has the usual eight and the own rate once, slowest first', () => {
  const own = {
    ...plan,
    picture: { ...plan.picture, base: { ...plan.picture.base, rate: { frames: 24_000, seconds: 1001 } } },
  };
  const hertz = rowsOfRates(own).map(({ frames, seconds }) => frames / seconds);
  expect(hertz).toEqual([...hertz].sort((a, b) => a - b));
  expect(hertz.filter((rate) => Math.abs(rate - 23.976) < 0.001)).toHaveLength(1);
  expect(hertz).toEqual(expect.arrayContaining([24, 25, 30, 48, 50, 60, 100, 120]));
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
