import type { FrameRate } from '../../plan/primitives';
import { coordinatedTiming } from '../tables/coordinated-timing';
import { syncLines } from './sync-lines';
import type { VideoTiming } from './video-timing';
import { wholeCells } from './whole-cells';

const { cellPixels, full } = coordinatedTiming;

/**
 * Timing by CVT with full blanking of the least raster of whole cells that holds a canvas, in exact fractions; the clock is
 * rounded down to quarters of a MHz. Null where a frame is no longer than its least sync and back porch.
 */
export function fullBlanking(canvasWidth: number, height: number, rate: FrameRate): VideoTiming | null {
  const width = wholeCells(canvasWidth);
  const frames = BigInt(rate.frames);
  const leastBlank = BigInt(full.leastSyncAndBackMicroseconds);
  // The estimated time of a line in microseconds is `time / parts`.
  const time = 1_000_000n * BigInt(rate.seconds) - leastBlank * frames;
  if (time <= 0n) return null;
  const parts = frames * BigInt(height + full.frontPorchLines);
  const syncAndBack = Number((leastBlank * parts) / time) + 1;
  const leastLines = syncLines(width, height) + full.leastBackPorchLines;
  const totalHeight = height + full.frontPorchLines + Math.max(syncAndBack, leastLines);
  const totalWidth = width + blankPixels(width, time, parts);
  const clockSteps = (BigInt(totalWidth) * parts * BigInt(full.clockStepsAMHz)) / time;
  return {
    width,
    height,
    totalWidth,
    totalHeight,
    pixelClockHz: (Number(clockSteps) * 1_000_000) / full.clockStepsAMHz,
  };
}

/** Blanking of a line: a share of it that falls as lines get longer, in whole double cells. */
function blankPixels(width: number, time: bigint, parts: bigint): number {
  const offset = BigInt(full.blankOffsetPercent);
  const slope = BigInt(full.blankSlopePercentAMillisecond);
  const least = BigInt(full.leastBlankPercent);
  // offset - slope x time / parts / 1000, as blank / whole in percent.
  const sloped = 1000n * offset * parts - slope * time;
  const isSloped = sloped > 1000n * least * parts;
  const blank = isSloped ? sloped : 1000n * least * parts;
  const rest = 100_000n * parts - blank;
  const doubleCell = BigInt(2 * cellPixels);
  return Number(((BigInt(width) * blank) / (rest * doubleCell)) * doubleCell);
}
