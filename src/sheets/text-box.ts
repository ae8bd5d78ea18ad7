import type { Label, TextSize } from './drawing';

/** Part of a drawing that shows, and how large. `leftMm`, `topMm`: the point of the drawing at the window's corner. */
export interface LabelView {
  /** Pixels a millimetre. */
  readonly scale: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Heights of the three sizes of text, in pixels. */
  readonly sizes: Readonly<Record<TextSize, number>>;
}

/** Where a text stands, in pixels from the window's corner. */
export interface TextBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Drawings are lettered in a fixed-width face: every sign is this share of its height wide (IBM Plex Mono, 600 of 1000 units). */
const signWidth = 0.6;
const lineHeight = 1.2;
/** Kept free round a text, as a share of its height. */
const airShare = 0.18;
const edgePx = 4;

/** Box of a label in this view; null where the line it belongs to does not show. */
export function textBox(label: Label, text: string, size: TextSize, view: LabelView): TextBox | null {
  const height = view.sizes[size];
  const long = text.length * signWidth * height + 2 * airShare * height;
  const [width, high] = label.turned === true ? [height * lineHeight, long] : [long, height * lineHeight];
  const at = label.to === undefined ? label : visiblePoint(label, label.to, view);
  if (at === null) return null;
  const gap = label.gap * height;
  const x = (at.xMm - view.leftMm) * view.scale + label.asideX * (width / 2 + gap) - width / 2;
  const y = (at.yMm - view.topMm) * view.scale + label.asideY * (high / 2 + gap) - high / 2;
  if (label.to === undefined) return { x, y, width, height: high };
  return {
    x: clamp(x, edgePx, view.widthPx - edgePx - width),
    y: clamp(y, edgePx, view.heightPx - edgePx - high),
    width,
    height: high,
  };
}

/** Whether a text is no longer than the visible part of the line that it is centred on; true where it is not tied to a line's length. */
export function fitsItsLine(label: Label, text: string, size: TextSize, view: LabelView): boolean {
  if (label.to?.at !== 'middle') return true;
  const part = visiblePart(label, label.to, view);
  if (part === null) return true;
  const length = Math.hypot(label.to.xMm - label.xMm, label.to.yMm - label.yMm) * (part.until - part.from) * view.scale;
  return text.length * signWidth * view.sizes[size] <= length;
}

/** Point on the visible part of a label's line: its beginning or its middle; null where nothing of it shows. */
function visiblePoint(
  label: Label,
  to: NonNullable<Label['to']>,
  view: LabelView,
): { xMm: number; yMm: number } | null {
  const part = visiblePart(label, to, view);
  if (part === null) return null;
  const share = to.at === 'start' ? part.from : (part.from + part.until) / 2;
  return { xMm: label.xMm + (to.xMm - label.xMm) * share, yMm: label.yMm + (to.yMm - label.yMm) * share };
}

/** The part of a line that lies in the window, as shares of its length. */
function visiblePart(
  label: Label,
  to: NonNullable<Label['to']>,
  view: LabelView,
): { readonly from: number; readonly until: number } | null {
  let from = 0;
  let until = 1;
  const clip = (start: number, change: number, low: number, high: number) => {
    if (change === 0) {
      if (start < low || start > high) until = -1;
      return;
    }
    const a = (low - start) / change;
    const b = (high - start) / change;
    from = Math.max(from, Math.min(a, b));
    until = Math.min(until, Math.max(a, b));
  };
  clip(label.xMm, to.xMm - label.xMm, view.leftMm, view.leftMm + view.widthPx / view.scale);
  clip(label.yMm, to.yMm - label.yMm, view.topMm, view.topMm + view.heightPx / view.scale);
  return until < from ? null : { from, until };
}

function clamp(value: number, low: number, high: number): number {
  return Math.max(low, Math.min(high, value));
}
