import { z } from 'zod';

/** Shift of a device's picture against the reference: milliseconds, or degrees of a frame. */
export const phase = z.strictObject({
  amount: z.number().min(-100_000).max(100_000),
  unit: z.enum(['ms', 'degrees']),
});
export type Phase = z.infer<typeof phase>;

/** The common beat of nodes, processors, cameras and tracking. */
export const sync = z.strictObject({
  /** Black burst (SMPTE ST 318), tri-level (SMPTE ST 274), or the precision time protocol (SMPTE ST 2059). */
  reference: z.enum(['black-burst', 'tri-level', 'ptp']),
  /** Outlets of one splitter of the reference. */
  outletsASplitter: z.int().min(2).max(1000),
  /** Tracking units that take the reference. */
  trackers: z.int().min(0).max(1000),
  phase: z.strictObject({ nodes: phase, processors: phase, cameras: phase, trackers: phase }),
});
export type Sync = z.infer<typeof sync>;

const inPhase: Phase = { amount: 0, unit: 'ms' };

export const defaultSync: Sync = {
  reference: 'tri-level',
  outletsASplitter: 8,
  trackers: 1,
  phase: { nodes: inPhase, processors: inPhase, cameras: inPhase, trackers: inPhase },
};
