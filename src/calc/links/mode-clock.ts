import type { FrameRate } from '../../plan/primitives';
import type { FixedMode } from '../tables/fixed-modes';

/**
 * Pixel clock of a fixed mode at a rate, in Hz; null where the mode does not run at it. A CTA-861 mode of a whole rate also
 * runs at x1000/1001, with the same totals and its clock divided by 1.001.
 */
export function modeClock(mode: FixedMode, rate: FrameRate): number | null {
  const asked = rate.frames * mode.seconds;
  const called = mode.frames * rate.seconds;
  if (asked === called) return mode.pixelClockHz;
  return mode.standard === 'cta' && asked * 1001 === called * 1000 ? (mode.pixelClockHz * 1000) / 1001 : null;
}
