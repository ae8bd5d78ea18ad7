import type { Raster } from '../raster';
import { drawText, textSize } from './draw-text';
import { fillRectangle } from './fill-rectangle';
import { panelLayout } from './panel-layout';
import { pictureInks } from './picture-inks';
import type { PictureSpot } from './test-picture-inputs';

/**
 * Where a run goes back to, on its last panel: from the knot a bar to a plate that names the port, below the words and above the
 * ramps. The plate ends before `until`, a pixel of the canvas; where it has no room for letters the bar stands alone.
 */
export function paintReturn(raster: Raster, spot: PictureSpot, port: string, until: number): void {
  const { knot, pen, words, rampY } = panelLayout(spot.width, spot.height);
  const left = spot.x + words.x;
  const middle = spot.y + knot.y;
  const from = spot.x + knot.x;
  fillRectangle(raster, from, middle - Math.floor((pen - 1) / 2), left - from, pen, pictureInks.returns);
  const text = `>${port}`;
  const room = { width: Math.min(until - left, words.width), height: rampY - words.y - words.height };
  let unit = 0;
  while (fits(plateSize(text, unit + 1), room)) unit++;
  if (unit === 0) return;
  const plate = plateSize(text, unit);
  const top = middle - Math.floor(plate.height / 2);
  fillRectangle(raster, left, top, plate.width, plate.height, pictureInks.returns);
  drawText(raster, text, left + unit, top + unit, unit, pictureInks.blank);
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Letters with a unit of their grid all round. */
function plateSize(text: string, unit: number): Size {
  const { width, height } = textSize(text, unit);
  return { width: width + 2 * unit, height: height + 2 * unit };
}

function fits(size: Size, room: Size): boolean {
  return size.width <= room.width && size.height <= room.height;
}
