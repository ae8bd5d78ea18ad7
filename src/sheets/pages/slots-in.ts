import type { Box } from '../drawing';
import { pageStyle } from './page-style';

/** Columns of text and tables are no narrower, and there are no more of them. */
const leastSlotMm = 78;
const mostSlots = 4;

/** How many columns can stand side by side in so much room where each is to be this wide; one always can. */
export function slotCounts(roomMm: number, easyMm: number): readonly number[] {
  const counts = Array.from({ length: mostSlots }, (_, i) => i + 1);
  return counts.filter((count) => count === 1 || slotWidthMm(roomMm, count) >= Math.max(leastSlotMm, easyMm));
}

/** So many columns of equal width side by side. */
export function slotsIn({ leftMm, topMm, rightMm, bottomMm }: Box, count: number): readonly Box[] {
  const widthMm = slotWidthMm(rightMm - leftMm, count);
  return Array.from({ length: count }, (_, i) => {
    const left = leftMm + i * (widthMm + pageStyle.slotGapMm);
    return { leftMm: left, topMm, rightMm: left + widthMm, bottomMm };
  });
}

export function slotWidthMm(roomMm: number, count: number): number {
  return (roomMm - (count - 1) * pageStyle.slotGapMm) / count;
}
