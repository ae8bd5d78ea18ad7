import { z } from 'zod';
import { id, label } from './primitives';
import { uniqueList } from './unique-list';

/** One step between the camera's move and the lit panel: whole or part frames of the surface's rate, and milliseconds. */
export const delayStep = z.strictObject({
  id,
  name: label,
  frames: z.number().min(0).max(1000),
  ms: z.number().min(0).max(100_000),
  /** Surfaces it concerns; null: all. */
  surfaceIds: z.array(id).max(100).nullable(),
});

export const delay = z.strictObject({
  steps: uniqueList(delayStep, 50),
  /** Most that the shoot bears; null: not stated. */
  mostMs: z.number().min(0).max(100_000).nullable(),
});
export type Delay = z.infer<typeof delay>;

/** Usual steps; their figures are placeholders of common practice, no source, until measured. */
export const defaultDelay: Delay = {
  steps: [
    { id: 'tracking', name: 'Tracking', frames: 0, ms: 8, surfaceIds: null },
    { id: 'render', name: 'Render', frames: 2, ms: 0, surfaceIds: null },
    { id: 'sync-wait', name: 'Wait for sync', frames: 1, ms: 0, surfaceIds: null },
    { id: 'link', name: 'Link', frames: 0, ms: 1, surfaceIds: null },
    { id: 'processor', name: 'Processor', frames: 1, ms: 0, surfaceIds: null },
    { id: 'panel', name: 'Panel', frames: 1, ms: 0, surfaceIds: null },
  ],
  mostMs: null,
};
