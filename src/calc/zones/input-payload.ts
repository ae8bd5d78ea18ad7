import type { Mode } from '../../plan/picture';
import type { Canvas } from '../links/canvas';
import { type TimingChoice, timeCanvas } from '../links/time-canvas';
import { fedRate } from '../picture/fed-rate';

/**
 * Bits a second that a processor's input takes for a canvas at the mode that asks most: pixel clock x three colours x depth.
 * Null where a mode has no timing of the kind chosen.
 */
export function inputPayload(canvas: Canvas, served: readonly Mode[], choice: TimingChoice): number | null {
  let most = 0;
  for (const mode of served) {
    const timing = timeCanvas(canvas, fedRate(mode), choice);
    if (typeof timing === 'string') return null;
    most = Math.max(most, timing.pixelClockHz * 3 * mode.depthBits);
  }
  return most;
}
