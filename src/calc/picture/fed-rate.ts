import type { Mode } from '../../plan/picture';
import type { FrameRate } from '../../plan/primitives';

/** The rate that the panels are fed with, exactly: interleaved pictures count as so many times the camera's rate. */
export function fedRate(mode: Mode): FrameRate {
  return { frames: mode.rate.frames * mode.pictures, seconds: mode.rate.seconds };
}
