/** A picture as a link sends it: its raster, the totals with blanking, and the clock that carries them. */
export interface VideoTiming {
  readonly width: number;
  readonly height: number;
  readonly totalWidth: number;
  readonly totalHeight: number;
  /** Whole steps of the timing's clock, at or just below the rate asked for; a published mode's own clock where it is one. */
  readonly pixelClockHz: number;
}
