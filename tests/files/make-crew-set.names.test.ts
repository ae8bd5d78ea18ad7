import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { panelAt } from '../../src/calc/surfaces/panel-at';
import { type CrewSetAsked, crewPageSteps, crewParts, crewPdf } from '../../src/files/make-crew-set';
import type { Plan } from '../../src/plan/plan';
import type { Block, CrewPart } from '../../src/sheets/crew-set/crew-part';
import { samplePlan } from '../arbitraries/sample-plans';
import { printFonts } from '../sheets/pages/print-fonts';
import { readPdf } from './read-pdf-pages';

async function printed(plan: Plan, parts: readonly string[], paper: CrewSetAsked['paper']) {
  const evaluation = createEvaluator().evaluate(plan);
  const asked = {
    paper,
    inks: 'colour',
    display: { lengths: plan.lengths, locale: 'en-GB', currency: plan.currency },
    date: '2026-11-25',
    address: null,
    parts,
  } as const;
  const all = crewParts(asked, plan, evaluation);
  const steps = crewPageSteps(asked, plan, evaluation, all);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const { bytes } = await crewPdf(step.value, printFonts, asked, plan);
  const { pages } = await readPdf(bytes, 'texts');
  // The reader cuts some texts at their space and gives that as a text of its own.
  const texts = pages.flatMap((page) => page.texts.join('\n').replaceAll('\n \n', ' ').split('\n'));
  return { evaluation, parts: all.filter(({ id }) => parts.includes(id)), texts };
}

/** How often each name of this form stands in texts. */
function countNames(texts: Iterable<string>, form: RegExp): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const text of texts) {
    for (const [name] of text.matchAll(form)) counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return counts;
}

/** Every cell that is words, of every table of some parts, as the schedules give them. */
function* cellsOf(parts: readonly CrewPart[]): Generator<string> {
  const blocks = parts.flatMap(({ sheets }) =>
    sheets.flatMap((sheet): readonly Block[] => (sheet.kind === 'blocks' ? sheet.blocks : sheet.under)),
  );
  for (const block of blocks) {
    if (block.kind !== 'table') continue;
    const { schedule } = block;
    for (let row = 0; row < schedule.count; row++) {
      for (const cell of schedule.row(row)) if (typeof cell === 'string') yield cell;
    }
    for (const cell of schedule.totals ?? []) if (typeof cell === 'string') yield cell;
  }
}

const panelName = /(?<![\w-])(?:[A-Z] )?C\d+ R\d+(?![\w-])/g;
const portName = /(?<![\w-])\d+[A-Z]?-\d{2}(?![\w-])/g;
const circuitName = /(?<![\w-])D\d+-\d+(?![\w-])/g;

test('every panel, port and circuit of the sample is printed as often as the schedules say', async () => {
  const tables = ['ports', 'circuits', 'counts', 'check-sheet'];
  const { parts, texts, evaluation } = await printed(samplePlan('horseshoe'), tables, 'a4');
  for (const form of [panelName, portName, circuitName]) {
    const said = countNames(cellsOf(parts), form);
    expect(countNames(texts, form)).toEqual(said);
    expect(said.size).toBeGreaterThan(120);
  }
  // And none is forgotten by the schedules.
  expect(new Set(evaluation.power.results.circuits.map(({ name }) => name))).toEqual(
    new Set(countNames(texts, circuitName).keys()),
  );
});

test('every panel stands once on the drawings of the zones, and in the tables under them as their schedules say', async () => {
  const { parts, texts, evaluation } = await printed(samplePlan('flat'), ['zones'], 'a4');
  const inTables = countNames(cellsOf(parts), panelName);
  const counts = countNames(texts, panelName);
  const { surfaces } = evaluation;
  for (let panel = 0; panel < surfaces.total; panel++) {
    const { name } = panelAt(surfaces, panel)!;
    expect([name, counts.get(name)]).toEqual([name, 1 + (inTables.get(name) ?? 0)]);
  }
  expect(counts.size).toBe(surfaces.total);
});
