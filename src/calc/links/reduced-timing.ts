import type { FrameRate } from '../../plan/primitives';
import type { VideoTiming } from './video-timing';

/** What sets one version of CVT's reduced blanking apart from another. */
interface ReducedBlanking {
  readonly blankPixels: number;
  readonly leastBlankMicroseconds: number;
  readonly leastBlankLines: number;
  readonly clockStepsAMHz: number;
  /** The rate that lines of blanking are counted at. */
  readonly lineRate: FrameRate;
}

/**
 * Timing of a raster by CVT with reduced blanking, in exact fractions; the clock is rounded down to whole steps, so that the
 * resulting rate is at or just below the one asked for. Null where a frame is no longer than its least blanking.
 */
export function reducedTiming(
  width: number,
  height: number,
  rate: FrameRate,
  { blankPixels, leastBlankMicroseconds, leastBlankLines, clockStepsAMHz, lineRate }: ReducedBlanking,
): VideoTiming | null {
  const frames = BigInt(lineRate.frames);
  const leastBlank = BigInt(leastBlankMicroseconds);
  // What is left of a frame for its active lines, in microseconds x frames.
  const active = 1_000_000n * BigInt(lineRate.seconds) - leastBlank * frames;
  if (active <= 0n) return null;
  const blankLines = Number((leastBlank * BigInt(height) * frames) / active) + 1;
  const totalHeight = height + Math.max(blankLines, leastBlankLines);
  const totalWidth = width + blankPixels;
  const clockSteps =
    (BigInt(rate.frames) * BigInt(totalWidth) * BigInt(totalHeight) * BigInt(clockStepsAMHz)) /
    (BigInt(rate.seconds) * 1_000_000n);
  return { width, height, totalWidth, totalHeight, pixelClockHz: (Number(clockSteps) * 1_000_000) / clockStepsAMHz };
}
