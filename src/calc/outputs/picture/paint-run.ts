import type { Run } from '../../runs/run-result';
import type { Raster } from '../raster';
import { drawLine, type Pixel } from './draw-line';
import { fillRectangle } from './fill-rectangle';
import { fillTriangle } from './fill-triangle';
import { paintReturn } from './paint-return';
import { panelLayout } from './panel-layout';
import { pictureInks } from './picture-inks';
import { type PictureSpot, pictureSpot, type TestPictureInputs } from './test-picture-inputs';

/** Length and half the width of an arrow's head, half the marks at the entry and at the end, in pens. */
const headLength = 5;
const headHalf = 3;
const entryHalf = 4;
const endHalf = 2;

/**
 * The line of one run from panel to panel with an arrow at each step, a diamond where it enters and a square where it ends; where
 * it returns the square has another ink and the port stands beside it.
 */
export function paintRun(raster: Raster, inputs: TestPictureInputs, run: Run): void {
  let before: Pixel | null = null;
  let entry: { readonly knot: Pixel; readonly half: number } | null = null;
  for (let place = 0; place < run.count; place++) {
    const spot = pictureSpot(inputs, inputs.runs.order[run.start + place]!);
    const { pen } = panelLayout(spot.width, spot.height);
    const knot = knotOf(spot);
    if (before !== null) {
      drawLine(raster, before, knot, pen, pictureInks.port);
      paintHead(raster, before, knot, pen);
    }
    if (place === run.count - 1) paintEnd(raster, spot, run, before);
    entry ??= { knot, half: Math.min(knot.x - spot.x - 1, entryHalf * pen) };
    before = knot;
  }
  if (entry !== null) paintDiamond(raster, entry.knot, entry.half);
}

/** End of a run whose line came from `before`, null where its only panel is its last: what returns keeps clear of that line's arrow. */
function paintEnd(raster: Raster, spot: PictureSpot, { returnPort }: Run, before: Pixel | null): void {
  const { pen } = panelLayout(spot.width, spot.height);
  const knot = knotOf(spot);
  if (returnPort !== null) {
    const arrow = before !== null && before.x > knot.x ? (knot.x + before.x - headLength * pen) / 2 - pen : Infinity;
    paintReturn(raster, spot, returnPort, Math.floor(arrow));
  }
  if (before === null) return;
  const half = endHalf * pen;
  const ink = returnPort === null ? pictureInks.port : pictureInks.returns;
  fillRectangle(raster, knot.x - half, knot.y - half, 2 * half + 1, 2 * half + 1, ink);
}

function knotOf(spot: PictureSpot): Pixel {
  const { knot } = panelLayout(spot.width, spot.height);
  return { x: spot.x + knot.x, y: spot.y + knot.y };
}

/** Head of the arrow in the middle of a step. */
function paintHead(raster: Raster, from: Pixel, to: Pixel, pen: number): void {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length === 0) return;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const point = (forward: number, aside: number): Pixel => ({
    x: middle.x + (along.x * forward - along.y * aside) * pen,
    y: middle.y + (along.y * forward + along.x * aside) * pen,
  });
  const back = -headLength / 2;
  fillTriangle(raster, point(headLength / 2, 0), point(back, headHalf), point(back, -headHalf), pictureInks.port);
}

/** The entry: a diamond over the begin of the line. */
function paintDiamond(raster: Raster, { x, y }: Pixel, half: number): void {
  for (const side of [-half, half]) {
    fillTriangle(raster, { x: x - half, y }, { x: x + half, y }, { x, y: y + side }, pictureInks.entry);
  }
}
