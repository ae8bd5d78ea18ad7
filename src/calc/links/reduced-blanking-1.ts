import type { FrameRate } from '../../plan/primitives';
import { coordinatedTiming } from '../tables/coordinated-timing';
import { reducedTiming } from './reduced-timing';
import { syncLines } from './sync-lines';
import type { VideoTiming } from './video-timing';
import { wholeCells } from './whole-cells';

const { reduced1 } = coordinatedTiming;

/**
 * Timing by CVT reduced blanking 1 of the least raster of whole cells that holds a canvas, its clock in quarters of a MHz.
 * Null where a frame is no longer than its least blanking.
 */
export function reducedBlanking1(canvasWidth: number, height: number, rate: FrameRate): VideoTiming | null {
  const width = wholeCells(canvasWidth);
  const leastBlankLines = reduced1.leastPorchLines + syncLines(width, height);
  return reducedTiming(width, height, rate, { ...reduced1, leastBlankLines, lineRate: rate });
}
