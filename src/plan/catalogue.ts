import { z } from 'zod';
import { breakout } from './breakout';
import { cable } from './cable';
import { distro } from './distro';
import { node } from './node';
import { panel } from './panel';
import { count, id } from './primitives';
import { processor } from './processor';

/** The catalogue items that a plan uses, carried inside it. Ids are unique over all lists. */
export const catalogue = z
  .strictObject({
    panels: z.array(panel).max(200),
    processors: z.array(processor).max(200),
    breakouts: z.array(breakout).max(200),
    distros: z.array(distro).max(200),
    nodes: z.array(node).max(200),
    cables: z.array(cable).max(200),
  })
  .superRefine((lists, context) => {
    const seen = new Set<string>();
    for (const [list, items] of Object.entries(lists)) {
      for (const [place, item] of items.entries()) {
        if (seen.has(item.id)) {
          const message = `the catalogue has '${item.id}' already`;
          context.addIssue({ code: 'custom', path: [list, place, 'id'], message });
          return;
        }
        seen.add(item.id);
      }
    }
  });
export type Catalogue = z.infer<typeof catalogue>;

/** What is owned of a catalogue item and what more can be had; null: not stated. Owned by the Wish chapter. */
export const stock = z.strictObject({ itemId: id, owned: count.nullable(), obtainable: count.nullable() });
export type Stock = z.infer<typeof stock>;
