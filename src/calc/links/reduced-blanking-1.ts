import type { FrameRate } from '../../plan/primitives';
import { coordinatedTiming } from '../tables/coordinated-timing';
import { syncLines } from './sync-lines';
import type { VideoTiming } from './video-timing';
import { wholeCells } from './whole-cells';

const { blankPixels, leastBlankMicroseconds, leastPorchLines, clockStepsAMHz } = coordinatedTiming.reduced1;

/**
 * Timing by CVT reduced blanking 1 of the least raster of whole cells that holds a canvas, in exact fractions; the clock is
 * rounded down to quarters of a MHz. Null where a frame is no longer than its least blanking.
 */
export function reducedBlanking1(canvasWidth: number, height: number, rate: FrameRate): VideoTiming | null {
  const width = wholeCells(canvasWidth);
  const frames = BigInt(rate.frames);
  const seconds = BigInt(rate.seconds);
  const leastBlank = BigInt(leastBlankMicroseconds);
  const active = 1_000_000n * seconds - leastBlank * frames;
  if (active <= 0n) return null;
  const blankLines = Number((leastBlank * BigInt(height) * frames) / active) + 1;
  const totalHeight = height + Math.max(blankLines, leastPorchLines + syncLines(width, height));
  const totalWidth = width + blankPixels;
  const clockSteps =
    (frames * BigInt(totalWidth) * BigInt(totalHeight) * BigInt(clockStepsAMHz)) / (seconds * 1_000_000n);
  return { width, height, totalWidth, totalHeight, pixelClockHz: (Number(clockSteps) * 1_000_000) / clockStepsAMHz };
}
