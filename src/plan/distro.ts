import { z } from 'zod';
import { amount, count, id, label } from './primitives';

/** A power distribution box. */
export const distro = z.strictObject({
  id,
  name: label,
  circuits: z.int().min(1).max(1000),
  /** Rating of its supply in amperes a leg. */
  legA: z.number().min(1).max(10_000),
  massKg: z.number().min(0).max(5000),
  purchase: z.strictObject({ price: amount.nullable(), leadDays: count.nullable() }),
});
export type Distro = z.infer<typeof distro>;
