import type { Box } from '../../sheets/drawing';

/** What part of a drawing a window shows: pixels a millimetre, and the point of the drawing at the window's upper left corner. */
export interface View {
  readonly scale: number;
  readonly leftMm: number;
  readonly topMm: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Pixels kept free round the drawing's box for its texts. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A panel of 500 mm is then 500 px wide. */
const mostScale = 1;

/** The whole drawing, as large as it fits and in the middle of the window. */
export function fitView(box: Box, size: Size, margins: Margins): View {
  const width = Math.max(1, box.rightMm - box.leftMm);
  const height = Math.max(1, box.bottomMm - box.topMm);
  const across = Math.max(40, size.width - margins.left - margins.right);
  const down = Math.max(40, size.height - margins.top - margins.bottom);
  const scale = Math.min(across / width, down / height, mostScale);
  return {
    scale,
    leftMm: box.leftMm - (margins.left + (across - width * scale) / 2) / scale,
    topMm: box.topMm - (margins.top + (down - height * scale) / 2) / scale,
  };
}

/** Zooms about a point of the window, which stays where it is. `least`: the smallest scale, such as half of the fitted one. */
export function zoomView(view: View, factor: number, x: number, y: number, least: number): View {
  const scale = Math.max(Math.min(least, mostScale), Math.min(mostScale, view.scale * factor));
  return {
    scale,
    leftMm: view.leftMm + x / view.scale - x / scale,
    topMm: view.topMm + y / view.scale - y / scale,
  };
}

/** Moves the drawing by so many pixels to the right and down; some of its box always stays in the window. */
export function moveView(view: View, dx: number, dy: number, box: Box, size: Size): View {
  const keep = 48 / view.scale;
  return {
    scale: view.scale,
    leftMm: clamp(view.leftMm - dx / view.scale, box.leftMm - size.width / view.scale + keep, box.rightMm - keep),
    topMm: clamp(view.topMm - dy / view.scale, box.topMm - size.height / view.scale + keep, box.bottomMm - keep),
  };
}

export function toDrawing(view: View, x: number, y: number): { readonly xMm: number; readonly yMm: number } {
  return { xMm: view.leftMm + x / view.scale, yMm: view.topMm + y / view.scale };
}

function clamp(value: number, low: number, high: number): number {
  return Math.max(Math.min(low, high), Math.min(Math.max(low, high), value));
}
