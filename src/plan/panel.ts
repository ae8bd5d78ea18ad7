import { z } from 'zod';
import { amount, angleDeg, count, id, label, sizeMm } from './primitives';
import { uniqueList } from './unique-list';

/** One LED panel of the catalogue, as its data sheet states it. `null` is a figure that the sheet does not state. */
export const panel = z.strictObject({
  id,
  name: label,
  size: z.strictObject({
    widthMm: sizeMm,
    heightMm: sizeMm,
    depthMm: sizeMm,
    /** A bevelled frame lets the fronts touch on a convex joint. */
    bevelled: z.boolean(),
  }),
  pixels: z.strictObject({ wide: z.int().min(1).max(8192), high: z.int().min(1).max(8192) }),
  massKg: z.number().min(0).max(1000),
  lock: z.strictObject({
    /** Joint angles the lock takes: 0 flat, positive concave, negative convex. */
    stepsDeg: z.array(angleDeg).max(200),
    highestStackMm: sizeMm.nullable(),
    longestHangMm: sizeMm.nullable(),
  }),
  light: z.strictObject({
    refreshHz: z.number().min(1).max(1e6).nullable(),
    /** locked: a whole multiple of the fed rate at or below the sheet's figure; fixed: exactly the sheet's figure. */
    refreshMode: z.enum(['locked', 'fixed']),
    peakNits: z.number().min(0).max(1e6).nullable(),
  }),
  data: z.strictObject({
    /** Panels that one data chain may carry; null: not stated. */
    chainPanels: z.int().min(1).max(10_000).nullable(),
    /** True where a panel without power still passes data on. */
    passesUnpowered: z.boolean(),
    /** Processors that drive it, with the sheet's pixels a port at 60 Hz and 8 bit for the pair (null: the processor's own figure). */
    drivenBy: uniqueList(
      z.strictObject({ processorId: id, portPixels: z.int().min(1).max(1e8).nullable() }),
      50,
      'processorId',
    ),
  }),
  power: z.strictObject({
    blackW: z.number().min(0).max(1e5),
    typicalW: z.number().min(0).max(1e5),
    fullWhiteW: z.number().min(0).max(1e5),
    powerFactor: z.number().min(0.1).max(1),
    lowestV: z.number().min(1).max(1000),
    highestV: z.number().min(1).max(1000),
    /** Amperes that its power chain may carry. */
    chainA: z.number().min(0.1).max(1000).nullable(),
    leakageMa: z.number().min(0).max(1000).nullable(),
    inrushA: z.number().min(0).max(10_000).nullable(),
  }),
  purchase: z.strictObject({
    price: amount.nullable(),
    perCase: z.int().min(1).max(1000),
    caseMassKg: z.number().min(0).max(1000),
    leadDays: count.nullable(),
  }),
});
export type Panel = z.infer<typeof panel>;
