import type { Zone } from '../../zones/zone-result';
import type { Raster } from '../raster';
import { fillRectangle } from './fill-rectangle';
import { pictureInks } from './picture-inks';
import type { PictureSpot } from './test-picture-inputs';

/** The outermost pixels of one panel: a border of exactly one. */
export function paintBorder(
  raster: Raster,
  { x, y, width, height }: PictureSpot,
  ink: number = pictureInks.border,
): void {
  fillRectangle(raster, x, y, width, 1, ink);
  fillRectangle(raster, x, y + height - 1, width, 1, ink);
  fillRectangle(raster, x, y, 1, height, ink);
  fillRectangle(raster, x + width - 1, y, 1, height, ink);
}

/** Thickness of a zone's edge and its distance from the panel's own, in pixels. */
const edge = 2;

/** A line inside the border along those sides of a panel that are sides of its zone: there another processor begins. */
export function paintZoneEdge(
  raster: Raster,
  { x, y, width, height }: PictureSpot,
  zone: Zone,
  column: number,
  row: number,
): void {
  const ink = pictureInks.zoneEdge;
  const far = 2 * edge;
  if (column === zone.firstColumn) fillRectangle(raster, x + edge, y + edge, edge, height - far, ink);
  if (column === zone.firstColumn + zone.columns - 1) {
    fillRectangle(raster, x + width - far, y + edge, edge, height - far, ink);
  }
  if (row === zone.firstRow) fillRectangle(raster, x + edge, y + height - far, width - far, edge, ink);
  if (row === zone.firstRow + zone.rows - 1) fillRectangle(raster, x + edge, y + edge, width - far, edge, ink);
}
