import type { FrameRate } from '../../plan/primitives';
import { coordinatedTiming } from '../tables/coordinated-timing';
import { reducedTiming } from './reduced-timing';
import type { VideoTiming } from './video-timing';
import { wholeRate } from './whole-rate';

/**
 * Timing of a canvas of any size by CVT reduced blanking 2, its clock in whole kHz. A x1000/1001 rate has the lines of the
 * whole rate (the standard's video-optimized timing). Null where a frame is no longer than its least blanking.
 */
export function reducedBlanking2(width: number, height: number, rate: FrameRate): VideoTiming | null {
  return reducedTiming(width, height, rate, { ...coordinatedTiming.reduced2, lineRate: wholeRate(rate) });
}
