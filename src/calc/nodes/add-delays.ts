import type { Delay } from '../../plan/delay';
import type { SurfacePicture } from '../picture/picture-result';
import { framePeriodMs } from './frame-period';
import type { DelayFigure, SurfaceDelay } from './node-result';

/** Delay of every surface from tracked camera to lit panel: frames count at the rate of the camera, whatever is fed between. */
export function addDelays(
  steps: Delay['steps'],
  surfaces: readonly Pick<SurfacePicture, 'surfaceId' | 'mode'>[],
): readonly SurfaceDelay[] {
  return surfaces.map(({ surfaceId, mode }) => {
    const periodMs = framePeriodMs(mode.rate);
    const own = steps
      .filter(({ surfaceIds }) => surfaceIds === null || surfaceIds.includes(surfaceId))
      .map(
        ({ id, name, frames, ms }): DelayFigure => ({ stepId: id, name, frames, ms, totalMs: frames * periodMs + ms }),
      );
    if (own.length === 0) return { surfaceId, steps: own, ms: null, frames: null };
    const ms = own.reduce((sum, { totalMs }) => sum + totalMs, 0);
    return { surfaceId, steps: own, ms, frames: ms / periodMs };
  });
}
