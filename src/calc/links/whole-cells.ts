import { coordinatedTiming } from '../tables/coordinated-timing';

/**
 * The least width of whole cells that holds a canvas. CVT itself rounds the width down, which would cut off the canvas's last
 * pixels; a width that is whole cells already is the same either way.
 */
export function wholeCells(width: number): number {
  const { cellPixels } = coordinatedTiming;
  return Math.ceil(width / cellPixels) * cellPixels;
}
