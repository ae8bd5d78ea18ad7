import type { FrameRate } from '../../plan/primitives';
import { coordinatedTiming } from '../tables/coordinated-timing';
import type { VideoTiming } from './video-timing';
import { wholeRate } from './whole-rate';

const { blankPixels, leastBlankMicroseconds, leastBlankLines, clockStepsAMHz } = coordinatedTiming.reduced2;

/**
 * Timing of a canvas of any size by CVT reduced blanking 2, in exact fractions; the clock is rounded down to whole kHz, so that
 * the resulting rate is at or just below the one asked for. A x1000/1001 rate has the lines of the whole rate (the
 * standard's video-optimized timing). Null where a frame is no longer than its least blanking.
 */
export function reducedBlanking2(width: number, height: number, rate: FrameRate): VideoTiming | null {
  const whole = wholeRate(rate);
  const frames = BigInt(whole.frames);
  const leastBlank = BigInt(leastBlankMicroseconds);
  // What is left of a frame for its active lines, in microseconds x frames.
  const active = 1_000_000n * BigInt(whole.seconds) - leastBlank * frames;
  if (active <= 0n) return null;
  const blankLines = Number((leastBlank * BigInt(height) * frames) / active) + 1;
  const totalHeight = height + Math.max(blankLines, leastBlankLines);
  const totalWidth = width + blankPixels;
  const clockSteps =
    (BigInt(rate.frames) * BigInt(totalWidth) * BigInt(totalHeight) * BigInt(clockStepsAMHz)) /
    (BigInt(rate.seconds) * 1_000_000n);
  return { width, height, totalWidth, totalHeight, pixelClockHz: (Number(clockSteps) * 1_000_000) / clockStepsAMHz };
}
