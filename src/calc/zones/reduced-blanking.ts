import type { FrameRate } from '../../plan/primitives';
import { reducedBlankingFigures } from '../tables/reduced-blanking-figures';

/** Totals of a picture with its blanking, and the clock that carries it. */
export interface BlankedTiming {
  readonly totalWidth: number;
  readonly totalHeight: number;
  readonly pixelClockHz: number;
}

const { blankPixels, leastBlankMicroseconds, leastBlankLines, clockStepsAMHz } = reducedBlankingFigures;

/**
 * Timing of a canvas by CVT reduced blanking version 2, in exact fractions; the clock is rounded down to whole kHz, so that
 * the resulting rate is at or just below the one asked for. Null where a frame is shorter than its least blanking.
 */
export function reducedBlanking(width: number, height: number, rate: FrameRate): BlankedTiming | null {
  const frames = BigInt(rate.frames);
  const seconds = BigInt(rate.seconds);
  const leastBlank = BigInt(leastBlankMicroseconds);
  // What is left of a frame for its active lines, in microseconds x frames.
  const active = 1_000_000n * seconds - leastBlank * frames;
  if (active <= 0n) return null;
  const blankLines = Number((leastBlank * BigInt(height) * frames) / active) + 1;
  const totalHeight = height + Math.max(blankLines, leastBlankLines);
  const totalWidth = width + blankPixels;
  const clockSteps =
    (frames * BigInt(totalWidth) * BigInt(totalHeight) * BigInt(clockStepsAMHz)) / (seconds * 1_000_000n);
  return { totalWidth, totalHeight, pixelClockHz: (Number(clockSteps) * 1_000_000) / clockStepsAMHz };
}
