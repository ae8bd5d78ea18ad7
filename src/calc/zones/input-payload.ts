import type { Mode } from '../../plan/picture';
import { fedRate } from '../picture/fed-rate';
import { reducedBlanking } from './reduced-blanking';

export interface Canvas {
  readonly width: number;
  readonly height: number;
}

/**
 * Bits a second that a processor's input takes for a canvas at the mode that asks most: pixel clock with reduced blanking x
 * three colours x depth. Infinity where a mode is too fast for any blanking.
 */
export function inputPayload({ width, height }: Canvas, served: readonly Mode[]): number {
  return served.reduce((most, mode) => {
    const timing = reducedBlanking(width, height, fedRate(mode));
    return Math.max(most, timing === null ? Number.POSITIVE_INFINITY : timing.pixelClockHz * 3 * mode.depthBits);
  }, 0);
}
