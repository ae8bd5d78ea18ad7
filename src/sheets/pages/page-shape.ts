import type { Box } from '../drawing';
import type { Paper } from './papers';
import { titleBlockHeightMm } from './title-block';

export type Orientation = 'upright' | 'lying';

/** A sheet of paper as it is read, with its frame and what the title block leaves of it. */
export interface PageShape {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly frame: Box;
  readonly body: Box;
}

/** Clear space between the frame and what stands in it. */
const padMm = 3;

export function pageShape(paper: Paper, orientation: Orientation, hasCaution: boolean): PageShape {
  const isLying = orientation === 'lying';
  const widthMm = isLying ? paper.heightMm : paper.widthMm;
  const heightMm = isLying ? paper.widthMm : paper.heightMm;
  const frame: Box = {
    leftMm: paper.filingMarginMm,
    topMm: paper.marginMm,
    rightMm: widthMm - paper.marginMm,
    bottomMm: heightMm - paper.marginMm,
  };
  return {
    widthMm,
    heightMm,
    frame,
    body: {
      leftMm: frame.leftMm + padMm,
      topMm: frame.topMm + padMm,
      rightMm: frame.rightMm - padMm,
      bottomMm: frame.bottomMm - titleBlockHeightMm(frame, hasCaution) - padMm,
    },
  };
}
