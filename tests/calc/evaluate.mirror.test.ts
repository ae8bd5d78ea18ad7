import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import type { Evaluation } from '../../src/calc/evaluation';
import { applyCommand } from '../../src/plan/commands';
import type { Plan } from '../../src/plan/plan';
import type { WallHole } from '../../src/plan/wall';
import { whole } from '../arbitraries/plan-fields';
import { wiredPlan } from '../arbitraries/wired-plan';

const holeIn = (segmentId: string, n: number): fc.Arbitrary<WallHole> =>
  fc.record({
    id: fc.constant(`hole-${n}`),
    name: fc.constant(''),
    segmentId: fc.constant(segmentId),
    column: whole(1, 3),
    row: whole(1, 4),
    columns: whole(1, 2),
    rows: whole(1, 3),
  });

/**
 * A plan with one wall, as it is and with the wall mirrored. One odd joint of mixed ones keeps its side, so none are mixed.
 * Zones are cut from the left, so a wall with holes is one zone: its processor has pixels and ports enough.
 */
const pairs = wiredPlan
  .filter(({ walls }) => walls.length > 0)
  .chain((plan) => {
    const wall = plan.walls[0]!;
    const path = wall.path.map((segment) => ({ ...segment, mixed: null }));
    const holes = fc.oneof(
      fc.constant<WallHole[]>([]),
      fc.tuple(holeIn(path[0]!.id, 1), holeIn(path.at(-1)!.id, 2)).map((both) => [...both]),
    );
    return holes.map((cut): [Plan, Plan] => {
      const processors = plan.catalogue.processors.map((processor) => ({
        ...processor,
        canvas: { ...processor.canvas, pixels: 1e9, widest: 1e6, highest: 1e6 },
        outlets: { kind: 'direct' as const, ports: 1000 },
      }));
      const catalogue = cut.length > 0 ? { ...plan.catalogue, processors } : plan.catalogue;
      const one = {
        ...plan,
        catalogue,
        walls: [{ ...wall, path, holes: cut }],
        handChanges: [],
        ceilings: [],
        signal: {
          ...plan.signal,
          priority: 'repeats' as const,
          bySurface: cut.length > 0 ? [] : plan.signal.bySurface,
        },
      };
      const outcome = applyCommand(one, { name: 'mirror-wall', args: { wallId: wall.id } });
      if ('refused' in outcome) throw new Error(outcome.refused);
      return [one, outcome.plan];
    });
  });

function always(holds: (one: Evaluation, other: Evaluation, plan: Plan) => void): void {
  fc.assert(
    fc.property(pairs, ([plan, mirrored]) => {
      const { evaluate } = createEvaluator();
      holds(evaluate(plan), evaluate(mirrored), plan);
    }),
    { numRuns: 40 },
  );
}

/**
 * Whether a mirrored wall has a mirrored canvas. A panel narrower than its column stands at the column's left on the canvas,
 * mirrored or not, so that the rectangle round a run may be wider or narrower than the one round its image.
 */
function hasMirroredCanvas({ surfaces, ports }: Evaluation): boolean {
  const { types } = surfaces.surfaces[0]!;
  const { counting } = ports.results.surfaces[0]!;
  return counting === 'panels' || types.every(({ pixelsWide }) => pixelsWide === types[0]!.pixelsWide);
}

test('evaluate of a mirrored wall needs as many processors, circuits and, where its canvas is mirrored too, ports', () => {
  always((one, other) => {
    const { panels, pixels, processors, circuits, breakouts, portsUsed, portsLeast } = one.headline;
    expect(other.headline).toMatchObject({ panels, pixels, processors, circuits });
    if (!hasMirroredCanvas(one)) return;
    expect(other.headline).toMatchObject({ breakouts, portsUsed, portsLeast });
  });
});

test('evaluate of a mirrored wall stands mirrored about its own middle', () => {
  always((one, other, plan) => {
    // The circle of best fit, about which a wall is placed, is well defined only where the wall can stand.
    if (one.walls.checks.some(({ id, severity }) => id.startsWith('walls.crossing') && severity === 'stop')) return;
    const wall = one.walls.results.walls[0]!;
    const mirrored = other.walls.results.walls[0]!;
    const { xMm, yMm, turnDeg } = plan.walls[0]!.place;
    const turn = (turnDeg * Math.PI) / 180;
    // About the place, along the wall's middle and away from it.
    const own = (x: number, y: number) =>
      [
        (x - xMm) * Math.cos(turn) + (y - yMm) * Math.sin(turn),
        (y - yMm) * Math.cos(turn) - (x - xMm) * Math.sin(turn),
      ] as const;
    expect(mirrored.columns).toBe(wall.columns);
    for (let c = 0; c < wall.columns; c++) {
      for (const corner of [0, 2]) {
        const at = c * 4 + corner;
        const across = (wall.columns - 1 - c) * 4 + 2 - corner;
        const [u, v] = own(wall.frontMm[at]!, wall.frontMm[at + 1]!);
        const [mu, mv] = own(mirrored.frontMm[across]!, mirrored.frontMm[across + 1]!);
        expect(Math.hypot(mu + u, mv - v)).toBeLessThan(0.01);
      }
    }
  });
});

test('evaluate of a mirrored wall wires every panel as its image, and a wall that is its own image as it was', () => {
  always((one, other) => {
    const { count, columns, rows, column, row, at } = one.walls.results.walls[0]!.table;
    if (!hasMirroredCanvas(one)) return;
    const lengths = ({ runs: { results } }: Evaluation) => results.runs.map(({ count }) => count);
    expect(lengths(other).sort()).toEqual(lengths(one).sort());
    if (one.runs.results.zones.length !== 1) return;
    const acrossFrom = (panel: number) => (columns - column[panel]!) * rows + row[panel]! - 1;
    // Columns without a panel at one end are in no zone: what stands may be its own image where the wall is not.
    const ends = (column[0] ?? 1) + (column[count - 1] ?? 1);
    const isItsOwnImage = Array.from({ length: count }, (_, panel) => {
      const across = ends - column[panel]!;
      return across >= 1 && across <= columns ? at[(across - 1) * rows + row[panel]! - 1]! : -1;
    }).every((image) => image >= 0);
    // What is its own image is wired as it was, or as its image where an empty column tells left from right.
    if (isItsOwnImage && one.runs.results.order.join() === other.runs.results.order.join()) return;
    const placeOf = ({ runs: { results } }: Evaluation, panel: number) => {
      const run = results.runs[results.runOf[panel]!];
      if (run === undefined) return null;
      return [results.placeOf[panel]!, run.count];
    };
    for (let panel = 0; panel < count; panel++) {
      const image = other.walls.results.walls[0]!.table.at[acrossFrom(panel)]!;
      expect(placeOf(other, image)).toEqual(placeOf(one, panel));
    }
  });
});
