import type { Materials } from '../../plan/materials';

/** Share and least number of spares for one item, its own where the plan says so. */
export function spareRule(materials: Materials, itemId: string): { readonly share: number; readonly least: number } {
  const own = materials.byItem.find((entry) => entry.itemId === itemId);
  return own ?? { share: materials.spareShare, least: materials.spareLeast };
}

/** Spares of one item: its share of what is needed rounded up, at least the least; none where none is needed. */
export function spareCount(materials: Materials, itemId: string, needed: number): number {
  if (needed <= 0) return 0;
  const { share, least } = spareRule(materials, itemId);
  return Math.max(Math.ceil(share * needed - 1e-9), least);
}
