import { z } from 'zod';
import { buildLog } from './build-log';
import { id, label } from './primitives';

export const tickListFormat = 'voussoir-ticks';
export const tickListVersion = 1;

/** Ticks on their way from a phone to the planner: all that the phone holds for one plan. */
export const tickList = z.strictObject({
  format: z.literal(tickListFormat),
  version: z.literal(tickListVersion),
  planId: id,
  /** What the plan was called there, for a person who must choose. */
  planName: label,
  ...buildLog.shape,
});
export type TickList = z.infer<typeof tickList>;
