import type { Plan } from '../../plan/plan';
import type { CrewPart, CrewSheet } from '../crew-set/crew-part';
import type { Format } from '../format';
import { measureBlocks } from './block-pieces';
import type { ContentsEntry } from './contents-pieces';
import { layOutBlocks } from './lay-out-blocks';
import { layOutDrawing } from './lay-out-drawing';
import type { Page } from './page';
import type { PageDraft } from './page-draft';
import { type PaperId, paperById } from './papers';
import type { Inks } from './place-drawing';
import { drawTitleBlock, type TitleBlock } from './title-block';

export interface PagesOptions {
  readonly paper: PaperId;
  readonly titleBlock: TitleBlock;
  readonly inks: Inks;
  readonly lengths: Plan['lengths'];
  readonly format: Format;
}

/** A sheet on its pages. */
interface LaidSheet {
  readonly part: CrewPart;
  readonly sheet: CrewSheet;
  readonly drafts: readonly PageDraft[];
}

/** Parts of the crew set on paper, every page with frame and title block. The same parts give the same pages. */
export function layOutPages(parts: readonly CrewPart[], options: PagesOptions): readonly Page[] {
  const steps = pageSteps(parts, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same a sheet at a time; yields the share that is done. */
export function* pageSteps(parts: readonly CrewPart[], options: PagesOptions): Generator<number, readonly Page[]> {
  const sheets = parts.flatMap((part) => part.sheets.map((sheet) => ({ part, sheet })));
  const unnumbered = contentsOf(sheets.map((each) => ({ ...each, number: null })));
  const laid: LaidSheet[] = [];
  for (const { part, sheet } of sheets) {
    laid.push({ part, sheet, drafts: layOutSheet(sheet, unnumbered, options) });
    yield laid.length / sheets.length;
  }
  // Numbers take no room of their own, so that the contents need as many pages with them as without.
  let number = 1;
  const numbered = laid.map(({ part, sheet, drafts }) => {
    const first = number;
    number += drafts.length;
    return { part, sheet, number: first };
  });
  const contents = contentsOf(numbered);
  const all = laid.map((each) =>
    hasContents(each.sheet) ? { ...each, drafts: layOutSheet(each.sheet, contents, options) } : each,
  );
  const of = number - 1;
  return all.flatMap(({ part, sheet, drafts }, i) =>
    drafts.map((draft, page) => finish(draft, part, sheet, numbered[i]!.number + page, of, options.titleBlock)),
  );
}

function layOutSheet(
  sheet: CrewSheet,
  contents: readonly ContentsEntry[],
  { paper: id, inks, lengths, format }: PagesOptions,
): readonly PageDraft[] {
  const paper = paperById(id);
  if (sheet.kind === 'blocks') return layOutBlocks(sheet, measureBlocks(sheet.blocks, format, contents), paper);
  const under = measureBlocks(sheet.under, format, contents);
  return layOutDrawing(sheet, under, paper, { paperName: paper.name, lengths, format, inks });
}

function hasContents(sheet: CrewSheet): boolean {
  return (sheet.kind === 'blocks' ? sheet.blocks : sheet.under).some(({ kind }) => kind === 'contents');
}

/** A line for each part, and one for each of its sheets where it has several. */
function contentsOf(
  sheets: readonly { readonly part: CrewPart; readonly sheet: CrewSheet; readonly number: number | null }[],
): readonly ContentsEntry[] {
  return sheets.flatMap(({ part, sheet, number }) => {
    const ofPart = sheet === part.sheets[0] ? [{ title: part.title, isPart: true, number }] : [];
    const ofSheet = part.sheets.length > 1 ? [{ title: sheet.title, isPart: false, number }] : [];
    return [...ofPart, ...ofSheet];
  });
}

function finish(
  { shape, items, scale }: PageDraft,
  part: CrewPart,
  { title, side, caution }: CrewSheet,
  number: number,
  of: number,
  titleBlock: TitleBlock,
): Page {
  const words = { title, side, caution, scale, number, of };
  return {
    widthMm: shape.widthMm,
    heightMm: shape.heightMm,
    title,
    partId: part.id,
    items: [...items, ...drawTitleBlock(shape.frame, titleBlock, words)],
  };
}
