import type { BlocksSheet } from '../crew-set/crew-part';
import type { Box } from '../drawing';
import type { MeasuredBlocks } from './block-pieces';
import { type Flowed, flowPieces } from './flow-pieces';
import { heading } from './heading';
import type { PageDraft } from './page-draft';
import { type Orientation, type PageShape, pageShape } from './page-shape';
import type { Paper } from './papers';
import { slotCounts, slotsIn, slotWidthMm } from './slots-in';

/** From this width of the upright sheet on, pages of tables lie: two columns, or one wide table. */
const lyingFromMm = 250;

/**
 * A sheet of texts and tables in as many columns as need the fewest pages; small paper upright and large paper lying, unless
 * its tables have more room the other way.
 */
export function layOutBlocks(sheet: BlocksSheet, measured: MeasuredBlocks, paper: Paper): readonly PageDraft[] {
  const orientations: readonly Orientation[] =
    paper.widthMm >= lyingFromMm ? ['lying', 'upright'] : ['upright', 'lying'];
  let best: { readonly pages: readonly PageDraft[]; readonly tightMm: number } | null = null;
  for (const orientation of orientations) {
    const shape = pageShape(paper, orientation, sheet.caution !== null);
    const roomMm = shape.body.rightMm - shape.body.leftMm;
    const tightMm = Math.max(0, measured.easyMm - roomMm);
    if (best !== null && tightMm >= best.tightMm) break;
    best = { pages: fewestPages(sheet, measured, shape), tightMm };
    if (tightMm === 0) break;
  }
  return best!.pages;
}

function fewestPages(sheet: BlocksSheet, measured: MeasuredBlocks, shape: PageShape): readonly PageDraft[] {
  let best: readonly PageDraft[] | null = null;
  for (const count of slotCounts(shape.body.rightMm - shape.body.leftMm, measured.easyMm)) {
    const pages = layOut(sheet, measured, shape, count);
    if (best === null || pages.length < best.length) best = pages;
    if (pages.length === 1) break;
  }
  return best!;
}

function layOut(
  { title, side, blocks }: BlocksSheet,
  measured: MeasuredBlocks,
  shape: PageShape,
  count: number,
): readonly PageDraft[] {
  const hasOwnTitle = blocks[0]?.kind === 'text' && blocks[0].style === 'title';
  const first = hasOwnTitle ? null : heading(title, side, shape.body);
  const later = heading(`${title}, continued`, side, shape.body);
  const bodyOf = (page: number): Box => {
    const head = page === 0 ? first : later;
    return head === null ? shape.body : { ...shape.body, topMm: head.bottomMm };
  };
  const widthMm = slotWidthMm(shape.body.rightMm - shape.body.leftMm, count);
  const pages = flowPieces(measured.pieces(widthMm), (page) => slotsIn(bodyOf(page), count));
  const filled: readonly Flowed[] = pages.length === 0 ? [{ items: [], bottomMm: 0 }] : pages;
  return filled.map(({ items }, page) => ({
    shape,
    scale: null,
    items: [...((page === 0 ? first : later)?.items ?? []), ...items],
  }));
}
