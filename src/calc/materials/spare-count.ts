import type { Materials } from '../../plan/materials';

/** Spares of an item: its share of what is needed, rounded up, at least so many; none where nothing is needed. */
export function spareCount(materials: Materials, itemId: string, needed: number): number {
  if (needed === 0) return 0;
  const own = materials.byItem.find((item) => item.itemId === itemId);
  const { share, least } = own ?? { share: materials.spareShare, least: materials.spareLeast };
  // In whole millionths, so that 7 % of 100 is 7 and not 8.
  return Math.max(Math.ceil((Math.round(share * 1e6) * needed) / 1e6), least);
}
