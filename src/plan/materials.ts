import { z } from 'zod';
import { count, id, share } from './primitives';

/** Spares: a share of what is needed, at least so many, and where an item differs. Kept by catalogue item id. */
export const materials = z.strictObject({
  spareShare: share,
  spareLeast: count,
  byItem: z.array(z.strictObject({ itemId: id, share, least: count })).max(1200),
});
export type Materials = z.infer<typeof materials>;
