import { z } from 'zod';
import { amount, count, id, label } from './primitives';

/** A render node: the computer that feeds processors. */
export const node = z.strictObject({
  id,
  name: label,
  /** Video outputs. */
  outputs: z.int().min(1).max(64),
  /** Most pixels of one canvas; null: not stated. */
  canvasPixels: z.int().min(1).max(1e10).nullable(),
  powerW: z.number().min(0).max(1e5),
  massKg: z.number().min(0).max(1000),
  rackUnits: z.int().min(0).max(60),
  purchase: z.strictObject({ price: amount.nullable(), leadDays: count.nullable() }),
});
export type Node = z.infer<typeof node>;
