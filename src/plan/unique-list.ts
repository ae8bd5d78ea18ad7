import { z } from 'zod';

/** A list in which no two entries share the value of `key`. */
export function uniqueList<Item extends z.ZodType>(item: Item, most: number, key = 'id') {
  return z
    .array(item)
    .max(most)
    .superRefine((entries, context) => {
      const seen = new Set<unknown>();
      for (const [place, entry] of entries.entries()) {
        const value = (entry as Record<string, unknown>)[key];
        if (seen.has(value)) {
          context.addIssue({ code: 'custom', path: [place, key], message: `'${String(value)}' stands here twice` });
          return;
        }
        seen.add(value);
      }
    });
}
