import { z } from 'zod';
import { stock } from './catalogue';
import { amount, label, lengthMm, sizeMm } from './primitives';
import { uniqueList } from './unique-list';

/** What is wanted and what there is. `null` reads 'not stated' and is never passed. */
export const wish = z.strictObject({
  hall: z.strictObject({
    lengthMm: sizeMm.nullable(),
    widthMm: sizeMm.nullable(),
    clearHeightMm: sizeMm.nullable(),
    /** Kept free behind the wall's back edge. */
    walkwayMm: lengthMm,
  }),
  /** What must drive in. */
  vehicle: z.strictObject({ widthMm: sizeMm.nullable(), heightMm: sizeMm.nullable() }),
  wall: z.strictObject({
    form: z.enum(['ring', 'flat']),
    /** Wished inside diameter of a ring, or length of a flat wall. */
    acrossMm: sizeMm.nullable(),
    heightMm: sizeMm.nullable(),
    /** Wished gap of a ring; 0 for a closed one. */
    openingMm: lengthMm.nullable(),
  }),
  camerasAtOnce: z.int().min(1).max(16),
  budget: amount.nullable(),
  /** Cooling on site in watts. */
  coolingW: z.number().min(0).max(1e8).nullable(),
  stock: uniqueList(stock, 1200, 'itemId'),
  note: label,
});
export type Wish = z.infer<typeof wish>;

/** Nothing stated yet but a ring, and a walkway behind it of a usual width (common practice, no source, from memory). */
export const defaultWish: Wish = {
  hall: { lengthMm: null, widthMm: null, clearHeightMm: null, walkwayMm: 1200 },
  vehicle: { widthMm: null, heightMm: null },
  wall: { form: 'ring', acrossMm: null, heightMm: null, openingMm: null },
  camerasAtOnce: 1,
  budget: null,
  coolingW: null,
  stock: [],
  note: '',
};
