import type { Pixel } from './draw-line';

/** Where things stand in one panel of a test picture, in pixels from its upper left. */
export interface PanelLayout {
  /** Through which the line of its run passes: in the lower left, so that the line keeps clear of the words. */
  readonly knot: Pixel;
  /** Thickness of that line. */
  readonly pen: number;
  /** Room for the words. */
  readonly words: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  /** Upper edge of the ramps and the height of each of the three in colour; the grey one above them has twice that. */
  readonly rampY: number;
  readonly rampStripe: number;
}

/** Shares of the panel's width or height, by eye. */
const laneShare = 0.1;
const wordsLeft = 0.2;
const wordsRight = 0.96;
const wordsTop = 0.06;
const wordsBottom = 0.62;
const stripeShare = 0.026;
const penShare = 1 / 44;

/** For a panel of so many pixels on the canvas. */
export function panelLayout(width: number, height: number): PanelLayout {
  const rampStripe = Math.max(1, Math.round(height * stripeShare));
  const rampY = height - 1 - rampStripe * 5;
  const x = Math.round(width * wordsLeft);
  const y = Math.round(height * wordsTop);
  const bottom = Math.round(height * wordsBottom);
  return {
    knot: { x: Math.round(width * laneShare), y: Math.round((bottom + rampY) / 2) },
    pen: Math.max(1, Math.round(Math.min(width, height) * penShare)),
    words: { x, y, width: Math.round(width * wordsRight) - x, height: bottom - y },
    rampY,
    rampStripe,
  };
}
