import type { FrameRate } from '../../plan/primitives';
import { type SdiRaster, sdiFigures, type VideoLink } from '../tables/video-links';
import type { Canvas } from './canvas';
import { wholeRate } from './whole-rate';

/**
 * The least raster of an SDI link that holds a canvas at a rate. 'raster': none holds it; 'rate': those that hold it do not run
 * at this rate.
 */
export function sdiRaster({ rasters }: VideoLink, canvas: Canvas, rate: FrameRate): SdiRaster | 'raster' | 'rate' {
  const holding = rasters.filter(({ width, height }) => width >= canvas.width && height >= canvas.height);
  if (holding.length === 0) return 'raster';
  const whole = wholeRate(rate);
  const fps = whole.frames / whole.seconds;
  const running = holding.filter(({ fastestFps }) => sdiFigures.rates.includes(fps) && fps <= fastestFps);
  return running.length === 0 ? 'rate' : running.reduce((least, next) => (area(next) < area(least) ? next : least));
}

const area = ({ width, height }: SdiRaster) => width * height;

/** What a raster takes of its SDI link with blanking, bit/s; a x1000/1001 rate is counted as its whole rate, like the link's own. */
export function sdiNeed({ height }: Canvas, rate: FrameRate): number {
  const { bitsAPixel, clockHz, lines, fps } = sdiFigures;
  const whole = wholeRate(rate);
  const tier = 2 ** Math.max(0, Math.ceil(Math.log2(whole.frames / whole.seconds / fps)));
  return clockHz * bitsAPixel * (height / lines) ** 2 * tier;
}
