import type { DrawingSheet, Room } from '../crew-set/crew-part';
import type { Box, Drawing } from '../drawing';
import { drawingExtent } from '../drawing-extent';

export interface Scaled {
  readonly reduction: number;
  readonly drawing: Drawing;
  /** The rectangle round its lines, in mm of the thing drawn. */
  readonly extent: Box;
  /** What must be on the page: all lines with clear space for the letters round them, in mm of the thing drawn. */
  readonly needed: Box;
}

/** Clear space of the paper round the lines, for the texts that stand outside; and round what the drawing calls its box. */
const airMm = 10;
const boxAirMm = 2;
/** Beyond the scales of a sheet, for what none of them brings onto a page. */
const further = [5000, 10_000, 20_000, 50_000, 100_000, 200_000, 500_000, 1_000_000] as const;

/**
 * The largest of a sheet's scales, in order from the largest picture, at which its drawing has room. A drawing tells at which
 * scale it would fit; it is drawn anew there until one fits and the next larger one does not, since clear space hangs on the scale.
 */
export function chooseReduction(sheet: Pick<DrawingSheet, 'draw' | 'reductions'>, room: Room): Scaled {
  const end = sheet.reductions.at(-1) ?? 0;
  const reductions = [...sheet.reductions, ...further.filter((one) => one > end)];
  let at = Math.floor(sheet.reductions.length / 2);
  let tooLarge = -1;
  let fitted: { readonly index: number; readonly scaled: Scaled } | null = null;
  for (;;) {
    const tried = scaled(sheet, reductions[at]!, room);
    if (fits(tried, tried.reduction, room)) fitted = { index: at, scaled: tried };
    else tooLarge = at;
    if (tooLarge === reductions.length - 1) return tried;
    const told = reductions.findIndex((reduction) => fits(tried, reduction, room));
    const most: number = fitted?.index ?? reductions.length - 1;
    at = Math.min(most, Math.max(tooLarge + 1, told < 0 ? most : told));
    if (at !== fitted?.index) continue;
    // What was drawn for a smaller picture may keep more space clear than the next larger one needs.
    if (at === tooLarge + 1) return fitted.scaled;
    at -= 1;
  }
}

function scaled({ draw }: Pick<DrawingSheet, 'draw'>, reduction: number, room: Room): Scaled {
  const drawing = draw(reduction, room);
  const extent = drawingExtent(drawing);
  return { reduction, drawing, extent, needed: neededBox(drawing, extent, reduction) };
}

function neededBox({ box }: Drawing, extent: Box, reduction: number): Box {
  const [air, boxAir] = [airMm * reduction, boxAirMm * reduction];
  return {
    leftMm: Math.min(extent.leftMm - air, box.leftMm - boxAir),
    topMm: Math.min(extent.topMm - air, box.topMm - boxAir),
    rightMm: Math.max(extent.rightMm + air, box.rightMm + boxAir),
    bottomMm: Math.max(extent.bottomMm + air, box.bottomMm + boxAir),
  };
}

/** Whether what was drawn for one scale would have room at another. */
function fits({ drawing, extent }: Scaled, reduction: number, { widthMm, heightMm }: Room): boolean {
  const { leftMm, topMm, rightMm, bottomMm } = neededBox(drawing, extent, reduction);
  return (rightMm - leftMm) / reduction <= widthMm && (bottomMm - topMm) / reduction <= heightMm;
}
