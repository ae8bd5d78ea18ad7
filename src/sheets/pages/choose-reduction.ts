import type { DrawingSheet, Room } from '../crew-set/crew-part';
import type { Box, Drawing } from '../drawing';
import { drawingExtent } from '../drawing-extent';

export interface Scaled {
  readonly reduction: number;
  readonly drawing: Drawing;
  /** What must be on the page: all lines with clear space for the letters round them, in mm of the thing drawn. */
  readonly needed: Box;
}

/** Clear space of the paper round the lines, for the texts that stand outside; and round what the drawing calls its box. */
const airMm = 10;
const boxAirMm = 2;
/** Beyond the scales of a sheet, for what none of them brings onto a page. */
const further = [5000, 10_000, 20_000, 50_000, 100_000, 200_000, 500_000, 1_000_000] as const;

/** The largest of a sheet's scales, in order from the largest picture, at which its drawing has room. */
export function chooseReduction(sheet: Pick<DrawingSheet, 'draw' | 'reductions'>, room: Room): Scaled {
  const last = sheet.reductions.at(-1) ?? 0;
  const reductions = [...sheet.reductions, ...further.filter((one) => one > last)];
  let low = 0;
  let high = reductions.length - 1;
  let found = scaled(sheet, reductions[high]!, room);
  while (low < high) {
    const middle = (low + high) >> 1;
    const tried = scaled(sheet, reductions[middle]!, room);
    if (fits(tried, room)) {
      found = tried;
      high = middle;
    } else low = middle + 1;
  }
  return found;
}

function scaled({ draw }: Pick<DrawingSheet, 'draw'>, reduction: number, room: Room): Scaled {
  const drawing = draw(reduction, room);
  const extent = drawingExtent(drawing);
  const { box } = drawing;
  const [air, boxAir] = [airMm * reduction, boxAirMm * reduction];
  return {
    reduction,
    drawing,
    needed: {
      leftMm: Math.min(extent.leftMm - air, box.leftMm - boxAir),
      topMm: Math.min(extent.topMm - air, box.topMm - boxAir),
      rightMm: Math.max(extent.rightMm + air, box.rightMm + boxAir),
      bottomMm: Math.max(extent.bottomMm + air, box.bottomMm + boxAir),
    },
  };
}

function fits({ needed, reduction }: Scaled, { widthMm, heightMm }: Room): boolean {
  const width = (needed.rightMm - needed.leftMm) / reduction;
  const height = (needed.bottomMm - needed.topMm) / reduction;
  return width <= widthMm && height <= heightMm;
}
