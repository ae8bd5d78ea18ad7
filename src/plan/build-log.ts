import { z } from 'zod';
import { label } from './primitives';

/** What is ticked off, in the order of the work. */
export const buildStep = z.enum(['stands', 'wired', 'powered', 'tested']);
export type BuildStep = z.infer<typeof buildStep>;

/** One thing that somebody ticked, or took a tick back from. Ticks are only ever added: the newest for a thing and step counts. */
export const tick = z.strictObject({
  step: buildStep,
  of: z.enum(['column', 'port', 'circuit']),
  /** As it stands on paper: 'A C38', '3B-04', 'D4-11'. */
  name: z.string().min(1).max(24),
  done: z.boolean(),
  who: label,
  /** Milliseconds since 1970 by the clock of the device that ticked. */
  atMs: z.int().min(0).max(8_640_000_000_000_000),
});
export type Tick = z.infer<typeof tick>;
export type TickedKind = Tick['of'];

/** What has been built, step by step. */
export const buildLog = z.strictObject({ ticks: z.array(tick).max(500_000) });
export type BuildLog = z.infer<typeof buildLog>;

export const emptyBuildLog: BuildLog = { ticks: [] };
