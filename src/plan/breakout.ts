import { z } from 'zod';
import { amount, count, id, label } from './primitives';

/** A breakout: turns one fibre trunk from a processor into copper ports. */
export const breakout = z.strictObject({
  id,
  name: label,
  ports: z.int().min(1).max(1000),
  /** Line rate of its trunk in Mbit/s. */
  trunkMbps: z.number().min(1).max(1e7),
  powerW: z.number().min(0).max(1e5),
  massKg: z.number().min(0).max(1000),
  rackUnits: z.int().min(0).max(60),
  purchase: z.strictObject({ price: amount.nullable(), leadDays: count.nullable() }),
});
export type Breakout = z.infer<typeof breakout>;
