import type { Evaluation } from '../../../src/calc/evaluation';
import { emptyPlan } from '../../../src/plan/empty-plan';
import type { Plan } from '../../../src/plan/plan';
import { type BenchParts, type BenchStore, createBenchStore } from '../../../src/ui/state/create-bench-store';
import { stageFixture } from '../../arbitraries/evaluation-fixture';

export const somePlan: Plan = emptyPlan({ id: 'p', name: 'Some plan', lengths: 'metric' });

/** Wall of 12 columns and 6 rows, named C1 R1 on, in the shape that an evaluation has; the rest of it is not looked at. */
export function fakeEvaluation(plan: Plan, columns = 12): Evaluation {
  const parts = stageFixture({ columns, rows: 6, jointDeg: 5 });
  const chapter = <T>(results: T) => ({ results, checks: [], working: [] });
  return {
    surfaces: parts.surfaces,
    zones: chapter({ zones: parts.zones, surfaces: [], processors: 1 }),
    runs: chapter(parts.runs),
    power: chapter(parts.power),
    // A node for each zone, as wide as it.
    nodes: chapter({
      nodes: parts.zones.map((zone, i) => ({ ...zone, name: `N${i + 1}` })),
      nodeOfZone: parts.zones.map((_, i) => i),
    }),
    faults: chapter({ passes: new Uint8Array(parts.surfaces.total) }),
    checks: [],
    // Says which plan it came from, so that a test can tell evaluations apart.
    headline: { panels: plan.wish.camerasAtOnce },
  } as unknown as Evaluation;
}

export interface FakeBench extends BenchStore {
  /** Moves the clock. */
  readonly pass: (ms: number) => void;
  /** Plans that were evaluated, in order. */
  readonly evaluated: readonly Plan[];
}

/** A bench whose evaluations are made up and whose clock stands still until told. */
export function fakeBench(parts: Partial<BenchParts> = {}, plan: Plan = somePlan): FakeBench {
  let now = 0;
  const evaluated: Plan[] = [];
  const bench = createBenchStore(
    {
      createEvaluator: () => ({
        evaluate(next) {
          evaluated.push(next);
          return fakeEvaluation(next);
        },
      }),
      startLine: () => {
        throw new Error('no worker here');
      },
      isLarge: () => false,
      now: () => now,
      locale: 'en-GB',
      drawing: { view: 'unrolled', surfaceId: null, wires: false, from: 'behind', tint: 'none', follows: true },
      ...parts,
    },
    { documentKey: 'key-1', plan, page: 'summary' },
  );
  return {
    ...bench,
    evaluated,
    pass: (ms) => {
      now += ms;
    },
  };
}
