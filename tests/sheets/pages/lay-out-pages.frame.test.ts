import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import type { Plan } from '../../../src/plan/plan';
import { crewSet } from '../../../src/sheets/crew-set/crew-set';
import { drawingRoom } from '../../../src/sheets/pages/lay-out-drawing';
import { layOutPages } from '../../../src/sheets/pages/lay-out-pages';
import { type Paper, papers } from '../../../src/sheets/pages/papers';
import { formatQuantity } from '../../../src/units/format-quantity';
import { samplePlan } from '../../arbitraries/sample-plans';
import { smallPlan } from '../../arbitraries/small-plan';
import { wiredPlan } from '../../arbitraries/wired-plan';
import { outside } from './page-boxes';

const plans = fc.oneof(smallPlan, wiredPlan);

/** Names of the full length that a plan allows, in wide letters, without a blank, from right to left, and in pictures. */
const nasty = fc.constantFrom(
  'W'.repeat(200),
  'ab '.repeat(66),
  '\u202eسلام عليكم'.repeat(15),
  '🎬👩‍🔧'.repeat(28),
  'e\u0301'.repeat(100),
  '=1+1',
  '',
);

function renamed(plan: Plan, name: string): Plan {
  const named = <Item extends { readonly name: string }>(items: readonly Item[]) =>
    items.map((item) => ({ ...item, name }));
  const { catalogue } = plan;
  return {
    ...plan,
    name,
    note: name.repeat(20),
    revision: name.slice(0, 20),
    walls: named(plan.walls),
    ceilings: named(plan.ceilings),
    catalogue: {
      ...catalogue,
      panels: named(catalogue.panels),
      processors: named(catalogue.processors),
      distros: named(catalogue.distros),
    },
  };
}

function pagesOf(plan: Plan, paper: Paper) {
  const evaluation = createEvaluator().evaluate(plan);
  const display = { lengths: plan.lengths, currency: plan.currency, locale: 'en-GB' };
  const parts = crewSet(plan, evaluation, {
    display,
    rooms: [drawingRoom(paper, 'lying'), drawingRoom(paper, 'upright')],
    url: 'https://example.org/#p=1',
    since: null,
  });
  return layOutPages(parts, {
    paper: paper.id,
    titleBlock: { plan: plan.name, revision: plan.revision, date: '2026-11-25', fingerprint: '1a2b3c4d', stops: 123 },
    inks: 'colour',
    lengths: plan.lengths,
    format: (value, unit) => formatQuantity(value, unit, display),
  });
}

function stickingOut(plan: Plan, paper: Paper): readonly string[] {
  return pagesOf(plan, paper).flatMap(({ widthMm, heightMm, title, items }) => {
    const { filingMarginMm, marginMm } = paper;
    const frame = {
      leftMm: filingMarginMm,
      topMm: marginMm,
      rightMm: widthMm - marginMm,
      bottomMm: heightMm - marginMm,
    };
    return outside(items, frame).map((what) => `${title}: ${what}`);
  });
}

test.each(papers)('nothing of a sample is cut on $name', (paper) => {
  expect(stickingOut(samplePlan(paper.id === 'a4' ? 'ring-feet' : 'flat'), paper)).toEqual([]);
});

test('nothing of any plan is cut on any paper, whatever its names', () => {
  fc.assert(
    fc.property(plans, nasty, fc.constantFrom(...papers), (plan, name, paper) => {
      expect(stickingOut(renamed(plan, name), paper)).toEqual([]);
    }),
    { numRuns: 12 },
  );
});
