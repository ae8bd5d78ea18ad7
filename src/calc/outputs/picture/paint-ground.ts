import type { Raster } from '../raster';
import { fillRectangle } from './fill-rectangle';
import { panelLayout } from './panel-layout';
import { groundOfRun, pictureInks, type RampChannel, rampInk, rampLevels } from './picture-inks';
import type { PictureSpot } from './test-picture-inputs';

/** Inks of each ramp along a whole row of the canvas. */
export type RampRows = Readonly<Record<RampChannel, Uint16Array>>;

/** Ramps from black at the left edge of the canvas to full at its right, the same on every panel above and below. */
export function rampRows(canvasWidth: number): RampRows {
  const row = (channel: RampChannel) =>
    Uint16Array.from({ length: canvasWidth }, (_, x) => rampInk(channel, Math.floor((x * rampLevels) / canvasWidth)));
  return { grey: row('grey'), red: row('red'), green: row('green'), blue: row('blue') };
}

/**
 * Ground of one panel in the colour of its run, -1 for none; the cross-hatch, whose lines run on from panel to panel and from
 * node to node; and its piece of the ramps. `onSurface`: its top left on the canvas of the whole surface.
 */
export function paintGround(
  raster: Raster,
  spot: PictureSpot,
  onSurface: { readonly x: number; readonly y: number },
  run: number,
  hatchPitch: number,
  ramps: RampRows,
): void {
  const { x, y, width, height } = spot;
  // A canvas smaller than its panels, which is a fault that the plan may have, keeps what fits on it.
  const right = Math.min(width, raster.width - x);
  const bottom = Math.min(height, raster.height - y);
  const inks = run < 0 ? { ground: pictureInks.idleGround, hatch: pictureInks.idleHatch } : groundOfRun(run);
  fillRectangle(raster, x, y, width, height, inks.ground);
  for (let row = 0; row < bottom; row++) {
    const down = onSurface.y + row;
    const at = (y + row) * raster.width + x;
    // Where the lines across + down = n pitch and down - across = n pitch of the surface's canvas cross this row of the panel.
    for (const first of [modulo(-(onSurface.x + down), hatchPitch), modulo(down - onSurface.x, hatchPitch)]) {
      for (let across = first; across < right; across += hatchPitch) raster.inks[at + across] = inks.hatch;
    }
  }
  const { rampY, rampStripe } = panelLayout(width, height);
  const stripes: readonly RampChannel[] = ['grey', 'grey', 'red', 'green', 'blue'];
  for (let row = 0; row < stripes.length * rampStripe && rampY + row < bottom; row++) {
    const channel = stripes[Math.floor(row / rampStripe)]!;
    raster.inks.set(ramps[channel].subarray(x, x + width), (y + rampY + row) * raster.width + x);
  }
}

function modulo(value: number, by: number): number {
  return ((value % by) + by) % by;
}
