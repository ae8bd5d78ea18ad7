import { bench, describe } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import type { Plan } from '../../src/plan/plan';
import { samplePlan } from '../arbitraries/sample-plans';
import { planOfSize } from './plan-of-size';

/** A plan of no part that an evaluator may have met, evaluated by one that remembers nothing. */
const fromScratch = (plan: Plan) => () => {
  createEvaluator().evaluate(structuredClone(plan));
};

/** Enough for the code to run as fast as it gets. */
const warm = { warmupIterations: 30, iterations: 40 };

describe('evaluation from scratch', () => {
  bench('1,800 panels: the horseshoe of the samples', fromScratch(samplePlan('horseshoe')), warm);
  bench('1,800 panels', fromScratch(planOfSize(130, 2.5, 13, 7600)), warm);
  bench('20,000 panels', fromScratch(planOfSize(350, 1, 51, 25_000)));
  bench('200,000 panels', fromScratch(planOfSize(2300, 0.15, 78, 80_000)), { iterations: 5 });
});

describe('evaluation from scratch, twice the columns each time', () => {
  for (const columns of [300, 600, 1200, 2400]) {
    bench(`${columns} columns of 39 rows`, fromScratch(planOfSize(columns, 345 / columns, 39, columns * 18)));
  }
});

describe('one edit of the horseshoe of the samples, everything else remembered', () => {
  const plan = samplePlan('horseshoe');
  /** Ever new values, so that nothing is found among the edits before. */
  const editing = (edit: (value: number) => Plan) => {
    const { evaluate } = createEvaluator();
    let value = 1;
    evaluate(plan);
    return () => {
      evaluate(edit(value++));
    };
  };
  const [wall] = plan.walls;
  const [firstPanel] = plan.catalogue.panels;
  bench(
    'a price',
    editing((price) => {
      const panels = plan.catalogue.panels.with(0, { ...firstPanel!, purchase: { ...firstPanel!.purchase, price } });
      return { ...plan, catalogue: { ...plan.catalogue, panels } };
    }),
  );
  bench(
    'a joint',
    editing((value) => {
      const path = wall!.path.with(1, { ...wall!.path[1]!, jointDeg: 2 + (value % 997) / 997 });
      return { ...plan, walls: [{ ...wall!, path }] };
    }),
  );
  bench(
    'a frame rate',
    editing((value) => {
      const rate = { frames: 24_000 + (value % 35_000), seconds: 1000 };
      return { ...plan, picture: { ...plan.picture, base: { ...plan.picture.base, rate } } };
    }),
  );
});
