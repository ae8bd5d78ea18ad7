import { changesSinceIssue } from '../calc/compare/changes-since-issue';
import { createEvaluator } from '../calc/evaluate';
import type { Evaluation } from '../calc/evaluation';
import type { Plan } from '../plan/plan';
import { revisionOnPaper } from '../plan/revision-on-paper';
import type { CrewPart } from '../sheets/crew-set/crew-part';
import { crewSet } from '../sheets/crew-set/crew-set';
import { drawingRoom } from '../sheets/pages/lay-out-drawing';
import { pageSteps } from '../sheets/pages/lay-out-pages';
import type { Page } from '../sheets/pages/page';
import { type PaperId, paperById } from '../sheets/pages/papers';
import type { Inks } from '../sheets/pages/place-drawing';
import { qrPath } from '../sheets/qr-path';
import type { DisplayOptions } from '../units/display-options';
import { formatQuantity } from '../units/format-quantity';
import type { NamedFile } from './files-to-zip';
import { pageToSvg } from './page-to-svg';
import type { PrintFonts } from './pages-to-pdf';
import { planFingerprint } from './plan-fingerprint';
import { encodeShare, shareLink } from './share-link';

export interface CrewSetAsked {
  readonly paper: PaperId;
  readonly inks: Inks;
  readonly display: DisplayOptions;
  /** Day of the print by the user's clock, '2026-11-25'. */
  readonly date: string;
  /** Address of the page, for the code on the cover that opens a copy of the plan; null: no code. */
  readonly address: string | null;
  /** Parts of the set, by their ids; null: all. */
  readonly parts: readonly string[] | null;
  /** TrueType files for a PDF; null: pages for the screen are asked. */
  readonly fonts: PrintFonts | null;
}

/** A page for the screen. */
export interface PagePicture {
  /** From 1. */
  readonly number: number;
  readonly partId: string;
  readonly title: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly svg: string;
}

/** How far it is; which parts there are, at first; and pages, where those are asked. */
export interface CrewSetStep {
  readonly done: number;
  readonly parts?: readonly { readonly id: string; readonly title: string }[];
  readonly pages?: readonly PagePicture[];
}

/** Of the whole work, as far as it goes in steps. */
const layingOutShare = 0.7;
const pagesAStep = 8;

/** Makes the crew set step by step; ends with the PDF, or with null where pages for the screen were asked. */
export function* makeCrewSet(
  asked: CrewSetAsked,
  plan: Plan,
  evaluation: Evaluation,
): Generator<CrewSetStep, Promise<NamedFile> | null> {
  const all = crewParts(asked, plan, evaluation);
  yield { done: 0, parts: all.map(({ id, title }) => ({ id, title })) };
  const steps = crewPageSteps(asked, plan, evaluation, all);
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield { done: step.value * layingOutShare };
  const pages = step.value;
  if (asked.fonts !== null) return crewPdf(pages, asked.fonts, asked, plan);
  for (let first = 0; first < pages.length; first += pagesAStep) {
    const pictures = pages.slice(first, first + pagesAStep).map((page, i) => pictureOf(page, first + i + 1));
    const share = Math.min(1, (first + pagesAStep) / pages.length);
    yield { done: layingOutShare + (1 - layingOutShare) * share, pages: pictures };
  }
  return null;
}

type Asked = Omit<CrewSetAsked, 'fonts'>;

/** All parts of the set, for this paper. */
export function crewParts({ paper, display, address }: Asked, plan: Plan, evaluation: Evaluation): readonly CrewPart[] {
  const sheet = paperById(paper);
  const issued = changesSinceIssue(plan, evaluation, createEvaluator().evaluate);
  const url = address === null ? null : shareLink(address, encodeShare(plan), null);
  return crewSet(plan, evaluation, {
    display,
    rooms: [drawingRoom(sheet, 'lying'), drawingRoom(sheet, 'upright')],
    url: url !== null && qrPath(url, 'L') !== null ? url : null,
    since:
      issued === null
        ? null
        : {
            name: issued.revision.name,
            issuedOn: issued.revision.issuedOn,
            currency: issued.revision.content.currency,
            changes: issued.changes,
            panels: issued.panels,
          },
  });
}

/** The pages of those parts that are asked; yields the share that is laid out. */
export function crewPageSteps(
  { paper, inks, display, date, parts }: Asked,
  plan: Plan,
  evaluation: Evaluation,
  all: readonly CrewPart[],
): Generator<number, readonly Page[]> {
  return pageSteps(parts === null ? all : all.filter(({ id }) => parts.includes(id)), {
    paper,
    inks,
    lengths: plan.lengths,
    format: (value, unit) => formatQuantity(value, unit, display),
    titleBlock: {
      plan: plan.name,
      revision: revisionOnPaper(plan),
      date,
      fingerprint: planFingerprint(plan),
      stops: evaluation.checks.filter(({ severity }) => severity === 'stop').length,
    },
  });
}

/** The pages as one file: 'crew set A4.pdf'. */
export async function crewPdf(
  pages: readonly Page[],
  fonts: PrintFonts,
  { paper, date }: Pick<CrewSetAsked, 'paper' | 'date'>,
  { name }: Pick<Plan, 'name'>,
): Promise<NamedFile> {
  // Loaded when first asked for: pages on the screen need none of it.
  const { pagesToPdf } = await import('./pages-to-pdf');
  const bytes = await pagesToPdf(pages, fonts, { title: `${name}, crew set`, date });
  return { name: `crew set ${paperById(paper).name}.pdf`, bytes };
}

function pictureOf(page: Page, number: number): PagePicture {
  const { partId, title, widthMm, heightMm } = page;
  return { number, partId, title, widthMm, heightMm, svg: pageToSvg(page) };
}
