import { bench, describe } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { type CrewSetAsked, crewPageSteps, crewParts, crewPdf } from '../../src/files/make-crew-set';
import type { Plan } from '../../src/plan/plan';
import { samplePlan } from '../arbitraries/sample-plans';
import { printFonts } from '../sheets/pages/print-fonts';
import { planOfSize } from './plan-of-size';

const asked: CrewSetAsked = {
  paper: 'a4',
  inks: 'colour',
  display: { lengths: 'metric', locale: 'en-GB', currency: 'EUR' },
  date: '2026-11-25',
  address: null,
  parts: null,
  fonts: printFonts,
};

/** The whole set of a plan that is worked out already. */
function setOf(plan: Plan) {
  const evaluation = createEvaluator().evaluate(plan);
  const pages = () => {
    const steps = crewPageSteps(asked, plan, evaluation, crewParts(asked, plan, evaluation));
    let step = steps.next();
    while (!step.done) step = steps.next();
    return step.value;
  };
  return { pages, pdf: () => crewPdf(pages(), printFonts, asked, plan).then(() => undefined) };
}

const sample = setOf(samplePlan('horseshoe'));
const large = setOf(planOfSize(350, 1, 51, 25_000));

describe('crew set on A4', () => {
  bench('pages of 1,800 panels', () => void sample.pages(), { warmupIterations: 1, iterations: 3 });
  bench('PDF of 1,800 panels', sample.pdf, { warmupIterations: 1, iterations: 3 });
  bench('pages of 20,000 panels', () => void large.pages(), { warmupIterations: 0, iterations: 1 });
  bench('PDF of 20,000 panels', large.pdf, { warmupIterations: 0, iterations: 1 });
});
