import { z } from 'zod';
import { count, id, share } from './primitives';
import { uniqueList } from './unique-list';

/** Spares: a share of what is needed, at least so many, and where an item differs. Kept by catalogue item id. */
export const materials = z.strictObject({
  spareShare: share,
  spareLeast: count,
  byItem: uniqueList(z.strictObject({ itemId: id, share, least: count }), 1200, 'itemId'),
});
export type Materials = z.infer<typeof materials>;

/** Three in a hundred spare, at least one of each (common practice, no source, from memory). */
export const defaultMaterials: Materials = { spareShare: 0.03, spareLeast: 1, byItem: [] };
