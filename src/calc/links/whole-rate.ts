import type { FrameRate } from '../../plan/primitives';

/** The whole rate that a x1000/1001 rate was made from (60 for 60000/1001); any other rate as it is. */
export function wholeRate(rate: FrameRate): FrameRate {
  const { frames, seconds } = rate;
  const thousandths = frames * 1001;
  return thousandths % (seconds * 1000) === 0 && frames % seconds !== 0
    ? { frames: thousandths / (seconds * 1000), seconds: 1 }
    : rate;
}
