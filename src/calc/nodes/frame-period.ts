import type { FrameRate } from '../../plan/primitives';

/** Milliseconds of one frame. */
export function framePeriodMs({ frames, seconds }: FrameRate): number {
  return (1000 * seconds) / frames;
}
