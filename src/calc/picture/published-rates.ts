import type { FrameRate } from '../../plan/primitives';

/**
 * Frame rates of ITU-R BT.709-6 and BT.2020-2 (from memory), and 48 with its x1000/1001 rate (common practice, no source: 48 is in neither
 * list), slowest first.
 */
export const publishedRates: readonly FrameRate[] = [
  { frames: 24_000, seconds: 1001 },
  { frames: 24, seconds: 1 },
  { frames: 25, seconds: 1 },
  { frames: 30_000, seconds: 1001 },
  { frames: 30, seconds: 1 },
  { frames: 48_000, seconds: 1001 },
  { frames: 48, seconds: 1 },
  { frames: 50, seconds: 1 },
  { frames: 60_000, seconds: 1001 },
  { frames: 60, seconds: 1 },
  { frames: 100, seconds: 1 },
  { frames: 120_000, seconds: 1001 },
  { frames: 120, seconds: 1 },
];
