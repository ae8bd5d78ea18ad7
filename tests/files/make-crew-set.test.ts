import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import {
  type CrewSetAsked,
  type CrewSetStep,
  crewPageSteps,
  crewParts,
  crewPdf,
  makeCrewSet,
} from '../../src/files/make-crew-set';
import { planFingerprint } from '../../src/files/plan-fingerprint';
import { decodeShare } from '../../src/files/share-link';
import { samplePlan } from '../arbitraries/sample-plans';
import { textsOf } from '../sheets/pages/page-boxes';
import { printFonts } from '../sheets/pages/print-fonts';
import { readPageCodes } from './read-page-codes';
import { readPdf } from './read-pdf-pages';
import { readSvg } from './read-svg';

const plan = samplePlan('flat');
const evaluation = createEvaluator().evaluate(plan);
const asked: CrewSetAsked = {
  paper: 'a4',
  inks: 'colour',
  display: { lengths: 'metric', locale: 'en-GB', currency: 'EUR' },
  date: '2026-11-25',
  address: null,
  parts: ['cover', 'bill', 'ports'],
  fonts: null,
};

function drained<Step, Answer>(
  steps: Generator<Step, Answer>,
): { readonly steps: readonly Step[]; readonly answer: Answer } {
  const taken: Step[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done) return { steps: taken, answer: step.value };
    taken.push(step.value);
  }
}

test('makeCrewSet hands out every page for the screen, and tells how far it is', () => {
  const { steps, answer } = drained<CrewSetStep, unknown>(makeCrewSet(asked, plan, evaluation));
  const pages = steps.flatMap((step) => step.pages ?? []);
  expect(answer).toBeNull();
  expect([...new Set(pages.map(({ partId }) => partId))]).toEqual(asked.parts);
  for (const { svg, widthMm } of pages) expect(readSvg(svg)[0]!.attributes.width).toBe(`${widthMm}mm`);
  const shares = steps.map(({ done }) => done);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(shares.at(-1)).toBe(1);
  expect(steps[0]!.parts!.map(({ id }) => id)).toEqual(expect.arrayContaining([...asked.parts!, 'circuits']));
});

test('makeCrewSet ends with the PDF of the same pages where fonts are given', async () => {
  const { answer, steps } = drained(makeCrewSet({ ...asked, fonts: printFonts }, plan, evaluation));
  const { name, bytes } = (await answer)!;
  expect(name).toBe('crew set A4.pdf');
  expect(steps.every(({ pages }) => pages === undefined)).toBe(true);
  const shown = drained<CrewSetStep, unknown>(makeCrewSet(asked, plan, evaluation)).steps.flatMap(
    (step) => step.pages ?? [],
  );
  expect((await readPdf(bytes, 'texts')).pages).toHaveLength(shown.length);
});

test('crewPageSteps writes fingerprint, stops and revision of the plan on each page', () => {
  const { answer: pages } = drained(crewPageSteps(asked, plan, evaluation, crewParts(asked, plan, evaluation)));
  const stops = evaluation.checks.filter(({ severity }) => severity === 'stop').length;
  for (const { items } of pages) {
    const texts = textsOf(items);
    for (const said of [planFingerprint(plan), String(stops), plan.revision, '2026-11-25'])
      expect(texts).toContain(said);
  }
});

test('crewPdf names plan and paper', async () => {
  const { answer: pages } = drained(
    crewPageSteps({ ...asked, parts: ['cover'] }, plan, evaluation, crewParts(asked, plan, evaluation)),
  );
  const { name, bytes } = await crewPdf(pages, printFonts, { paper: 'tabloid', date: '2026-11-25' }, plan);
  expect(name).toBe('crew set Tabloid.pdf');
  expect((await readPdf(bytes, 'texts')).title).toBe(`${plan.name}, crew set`);
});

test('crewParts puts a code that opens a copy of the plan on the cover, where an address is known', () => {
  const codes = (address: string | null) =>
    crewParts({ ...asked, address }, plan, evaluation)[0]!.sheets.flatMap((sheet) =>
      sheet.kind === 'blocks' ? sheet.blocks.flatMap((block) => (block.kind === 'qr' ? [block.url] : [])) : [],
    );
  const [url] = codes('https://plan.example/');
  expect(url).toMatch(/^https:\/\/plan\.example\/#share=/);
  const opened = decodeShare(/#share=(.*)$/.exec(url!)![1]!);
  expect('plan' in opened && opened.plan.name).toBe(plan.name);
  expect(codes(null)).toEqual([]);
});

test.each(['a4', 'tabloid'] as const)(
  'the code on the cover on %s is read by an outside decoder and opens the plan',
  async (paper) => {
    const cover = { ...asked, paper, address: 'https://plan.example/', parts: ['cover'], fonts: printFonts };
    const { bytes } = (await drained(makeCrewSet(cover, plan, evaluation)).answer)!;
    const { pages } = await readPdf(bytes);
    const [said, ...others] = pages.flatMap(readPageCodes);
    expect(others).toEqual([]);
    expect(said).toBe(pages.flatMap(({ links }) => links)[0]!.url);
    const opened = decodeShare(/^https:\/\/plan\.example\/#share=(.*)$/.exec(said!)![1]!);
    expect('plan' in opened && opened.plan.name).toBe(plan.name);
  },
);
