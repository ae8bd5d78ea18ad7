import type { Feed } from '../../plan/feed';
import type { FrameRate } from '../../plan/primitives';
import { type FixedMode, fixedModes } from '../tables/fixed-modes';
import type { Canvas } from './canvas';
import { fullBlanking } from './full-blanking';
import { modeClock } from './mode-clock';
import { reducedBlanking1 } from './reduced-blanking-1';
import { reducedBlanking2 } from './reduced-blanking-2';
import type { VideoTiming } from './video-timing';

/** How pictures are blanked on a link. */
export type TimingChoice = Pick<Feed, 'timing' | 'containerId'>;

/** Why a canvas has no timing of the kind chosen. */
export type NoTiming = 'too-fast' | 'no-mode-of-this-size' | 'no-mode-at-this-rate' | 'unknown-container' | 'too-small';

/** Timing of a canvas at a rate as chosen, or why there is none. The raster may be larger than the canvas. */
export function timeCanvas(canvas: Canvas, rate: FrameRate, choice: TimingChoice): VideoTiming | NoTiming {
  const { width, height } = canvas;
  switch (choice.timing) {
    case 'reduced-2':
      return reducedBlanking2(width, height, rate) ?? 'too-fast';
    case 'reduced-1':
      return reducedBlanking1(width, height, rate) ?? 'too-fast';
    case 'full':
      return fullBlanking(width, height, rate) ?? 'too-fast';
    case 'cta': {
      const own = fixedModes.filter(
        (mode) => mode.standard === 'cta' && mode.width === width && mode.height === height,
      );
      return own.length === 0 ? 'no-mode-of-this-size' : (leastAt(own, rate) ?? 'no-mode-at-this-rate');
    }
    case 'container':
      return timeContainer(canvas, rate, choice.containerId);
  }
}

/** A fixed mode stands for its raster: each rate takes the mode of that raster that runs at it. */
function timeContainer(canvas: Canvas, rate: FrameRate, containerId: string | null): VideoTiming | NoTiming {
  const named = fixedModes.find(({ id }) => id === containerId);
  if (containerId !== null && named === undefined) return 'unknown-container';
  const offered =
    named === undefined
      ? fixedModes
      : fixedModes.filter(({ width, height }) => width === named.width && height === named.height);
  const holding = offered.filter(({ width, height }) => width >= canvas.width && height >= canvas.height);
  return holding.length === 0 ? 'too-small' : (leastAt(holding, rate) ?? 'no-mode-at-this-rate');
}

/** The mode of least pixel clock among those that run at the rate. */
function leastAt(modes: readonly FixedMode[], rate: FrameRate): VideoTiming | null {
  let least: VideoTiming | null = null;
  for (const mode of modes) {
    const pixelClockHz = modeClock(mode, rate);
    if (pixelClockHz === null || (least !== null && least.pixelClockHz <= pixelClockHz)) continue;
    const { width, height, totalWidth, totalHeight } = mode;
    least = { width, height, totalWidth, totalHeight, pixelClockHz };
  }
  return least;
}
