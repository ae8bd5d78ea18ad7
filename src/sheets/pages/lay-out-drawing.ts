import type { DrawingSheet, Room } from '../crew-set/crew-part';
import type { Box } from '../drawing';
import type { MeasuredBlocks } from './block-pieces';
import { chooseReduction, type Scaled } from './choose-reduction';
import { type DrawingFoot, drawingFoot, type FootOptions } from './drawing-foot';
import { type Flowed, flowPieces } from './flow-pieces';
import { type Heading, heading } from './heading';
import type { PageDraft } from './page-draft';
import { type Orientation, type PageShape, pageShape } from './page-shape';
import type { Paper } from './papers';
import { placeDrawing } from './place-drawing';
import { slotCounts, slotsIn, slotWidthMm } from './slots-in';

/** A drawing on a page of one orientation. */
interface Fitted {
  readonly shape: PageShape;
  readonly head: Heading;
  readonly scaled: Scaled;
  readonly foot: DrawingFoot;
}

/** Less than this under a drawing is left empty. */
const leastUnderMm = 18;
const underGapMm = 4;
/** Room that is kept under a drawing for its foot before its notes are known. */
const footMm = 10;

/** Room for a drawing on a page of this paper, under a title of one line and above a caution. */
export function drawingRoom(paper: Paper, orientation: Orientation): Room {
  const { body } = pageShape(paper, orientation, true);
  const { bottomMm } = heading('', null, body);
  return { widthMm: body.rightMm - body.leftMm, heightMm: body.bottomMm - bottomMm - footMm };
}

/**
 * A drawing at the largest of its scales that has room, and what belongs under it as far as it goes, then on the next
 * pages. The paper lies, unless it gives a larger picture upright, or the same on fewer pages.
 */
export function layOutDrawing(
  sheet: DrawingSheet,
  under: MeasuredBlocks,
  paper: Paper,
  options: FootOptions,
): readonly PageDraft[] {
  const [lying, upright] = (['lying', 'upright'] as const).map((orientation) => {
    const fitted = fitOn(sheet, paper, orientation, options);
    return { reduction: fitted.scaled.reduction, pages: finish(sheet, under, fitted, options) };
  });
  const isBetter =
    upright!.reduction < lying!.reduction ||
    (upright!.reduction === lying!.reduction && upright!.pages.length < lying!.pages.length);
  return isBetter ? upright!.pages : lying!.pages;
}

function finish(
  sheet: DrawingSheet,
  under: MeasuredBlocks,
  fitted: Fitted,
  options: FootOptions,
): readonly PageDraft[] {
  const drawn = drawnAt(fitted, sheet.under.length > 0);
  const { shape, head, foot, scaled } = fitted;
  const rest: Box = { ...shape.body, topMm: drawn.bottomMm };
  const pages = sheet.under.length === 0 ? [] : flowUnder(sheet, under, shape, rest);
  const first: PageDraft = {
    shape,
    scale: `1:${scaled.reduction}`,
    items: [
      ...head.items,
      ...placeDrawing(scaled.drawing, { ...drawn.placing, inks: options.inks }),
      ...foot.place(shape.body.leftMm, drawn.footTopMm),
      ...(pages[0]?.items ?? []),
    ],
  };
  const later = heading(`${sheet.title}, continued`, sheet.side, shape.body);
  return [first, ...pages.slice(1).map(({ items }) => ({ shape, scale: null, items: [...later.items, ...items] }))];
}

function fitOn(sheet: DrawingSheet, paper: Paper, orientation: Orientation, options: FootOptions): Fitted {
  const shape = pageShape(paper, orientation, sheet.caution !== null);
  const head = heading(sheet.title, sheet.side, shape.body);
  const widthMm = shape.body.rightMm - shape.body.leftMm;
  let keptMm = footMm;
  for (;;) {
    const room = { widthMm, heightMm: shape.body.bottomMm - head.bottomMm - keptMm };
    const scaled = chooseReduction(sheet, room);
    const foot = drawingFoot(scaled.drawing, scaled.reduction, widthMm, options);
    // Long notes want more room than was kept for them.
    if (foot.heightMm <= keptMm) return { shape, head, scaled, foot };
    keptMm = foot.heightMm;
  }
}

/** Where the drawing stands: high up where something stands under it, else in the middle of the page. */
function drawnAt({ shape: { body }, head, scaled, foot }: Fitted, hasUnder: boolean) {
  const { needed, reduction } = scaled;
  const roomMm = body.bottomMm - head.bottomMm - foot.heightMm;
  const heightMm = hasUnder ? (needed.bottomMm - needed.topMm) / reduction : roomMm;
  const halfWidth = ((body.rightMm - body.leftMm) / 2) * reduction;
  const halfHeight = (heightMm / 2) * reduction;
  const x = (needed.leftMm + needed.rightMm) / 2;
  const y = (needed.topMm + needed.bottomMm) / 2;
  const window = {
    leftMm: x - halfWidth,
    topMm: y - halfHeight,
    rightMm: x + halfWidth,
    bottomMm: y + halfHeight,
  };
  const footTopMm = head.bottomMm + heightMm;
  return {
    placing: { window, leftMm: body.leftMm, topMm: head.bottomMm, reduction },
    footTopMm,
    bottomMm: footTopMm + foot.heightMm + underGapMm,
  };
}

/** Blocks under a drawing, in the number of columns that needs the fewest pages. */
function flowUnder(sheet: DrawingSheet, under: MeasuredBlocks, { body }: PageShape, rest: Box): readonly Flowed[] {
  const later = { ...body, topMm: heading(`${sheet.title}, continued`, sheet.side, body).bottomMm };
  const hasRoom = rest.bottomMm - rest.topMm >= leastUnderMm;
  let best: readonly Flowed[] | null = null;
  const roomMm = body.rightMm - body.leftMm;
  for (const count of slotCounts(roomMm, under.easyMm)) {
    const widthMm = slotWidthMm(roomMm, count);
    const pages = flowPieces(under.pieces(widthMm), (page) =>
      page > 0 ? slotsIn(later, count) : hasRoom ? slotsIn(rest, count) : [],
    );
    if (best === null || pages.length < best.length) best = pages;
  }
  return best!;
}
