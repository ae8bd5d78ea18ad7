import { bench, describe } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { namesOfEvaluation } from '../../src/calc/names/names-of-evaluation';
import { labelsPdf } from '../../src/files/labels-pdf';
import { decodeShare, encodeShare, shareLink } from '../../src/files/share-link';
import { labelInputs } from '../../src/sheets/labels/label-inputs';
import { labelledKinds } from '../../src/sheets/labels/labelled-cable';
import { listLabelledCables } from '../../src/sheets/labels/list-labelled-cables';
import { startingGrids } from '../../src/sheets/labels/starting-grids';
import { qrPath } from '../../src/sheets/qr-path';
import { samplePlan } from '../arbitraries/sample-plans';
import { printFonts } from '../sheets/pages/print-fonts';
import { planOfSize } from './plan-of-size';

const address = 'https://plan.example/stage/';

describe.each([
  ['1,800', samplePlan('horseshoe')],
  ['20,000', planOfSize(1300, 0.27, 14, 20_000)],
])('a plan of %s panels with the names of a revision', (_panels, plan) => {
  const evaluation = createEvaluator().evaluate(plan);
  const issued = { ...plan, names: namesOfEvaluation(evaluation, plan.walls, null) };
  const signs = encodeShare(issued);
  const link = shareLink(address, signs, null);
  bench(`into a link of ${link.length} characters, ${qrPath(link, 'L')?.modules ?? 'too many'} modules a side`, () => {
    encodeShare(issued);
  });
  bench('out of the link', () => {
    decodeShare(signs);
  });
  bench(
    'its labels as PDF, each with a code',
    async () => {
      const cables = listLabelledCables(labelInputs(plan, evaluation), new Set(labelledKinds));
      const options = { address, planId: plan.id, used: 0, hasLines: false };
      await labelsPdf(plan.name, cables, startingGrids[2]!, options, printFonts);
    },
    { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 },
  );
});
