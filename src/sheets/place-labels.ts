import type { Dimension, Label, LabelSeries, Layer, Pen, TextSize } from './drawing';
import { fitsItsLine, type LabelView, type TextBox, textBox } from './text-box';
import { thinLabels } from './thin-labels';

export interface PlacedText extends TextBox {
  readonly text: string;
  readonly layer: Layer;
  readonly pen: Pen;
  readonly size: TextSize;
  readonly turned: boolean;
}

const ofDimensions = { layer: 'dimensions', pen: 'ink', size: 'normal' } as const;

/** Side of the squares that sort placed texts by where they are, in pixels. */
const squarePx = 48;

/**
 * Chooses the texts that have room at this scale and in this window, and where each stands. No two of them touch: the
 * texts of dimensions come first, then the series in their order.
 */
export function placeLabels(
  series: readonly LabelSeries[],
  dimensions: readonly Dimension[],
  view: LabelView,
): readonly PlacedText[] {
  const placed: PlacedText[] = [];
  const taken = new Map<string, TextBox[]>();
  const put = (label: Label, text: string, kind: Pick<LabelSeries, 'layer' | 'pen' | 'size'>): void => {
    const box = text === '' ? null : textBox(label, text, kind.size, view);
    if (box === null) return;
    if (!isInside(box, view)) {
      // At the edge of the window the short form may still have room.
      if (label.short !== undefined && label.short !== text) put(label, label.short, kind);
      return;
    }
    for (const key of squares(box)) if (taken.get(key)?.some((other) => touch(box, other))) return;
    for (const key of squares(box)) {
      const there = taken.get(key);
      if (there === undefined) taken.set(key, [box]);
      else there.push(box);
    }
    placed.push({
      ...box,
      text,
      layer: kind.layer,
      pen: kind.pen,
      size: kind.size,
      turned: label.turned === true,
    });
  };

  for (const dimension of dimensions) put(dimensionLabel(dimension), dimension.text, ofDimensions);
  for (const one of series) {
    if (view.scale < one.leastScale) continue;
    const thinned = thinLabels(one, view);
    for (const index of one.near?.(windowMm(view)) ?? counted(one.count)) {
      if (thinned.step > 1 && one.numberOf !== null && one.numberOf(index) % thinned.step !== 0) continue;
      const label = one.at(index);
      const short = thinned.short || !fitsItsLine(label, label.text, one.size, view);
      put(label, short ? (label.short ?? label.text) : label.text, one);
    }
  }
  return placed;
}

/** The text of a dimension stands above a level line, and turned on the left of an upright one, or aside where that is asked. */
function dimensionLabel({ x1Mm, y1Mm, x2Mm, y2Mm, text, aside }: Dimension): Label {
  const turned = Math.abs(y2Mm - y1Mm) > Math.abs(x2Mm - x1Mm);
  const line = { text, xMm: x1Mm, yMm: y1Mm, to: { xMm: x2Mm, yMm: y2Mm, at: 'middle' } } as const;
  if (aside !== undefined) return { ...line, asideX: aside.x, asideY: aside.y, gap: aside.gap };
  return {
    ...line,
    asideX: turned ? -1 : 0,
    asideY: turned ? 0 : -1,
    gap: 0.3,
    turned,
  };
}

function windowMm(view: LabelView) {
  return {
    leftMm: view.leftMm,
    topMm: view.topMm,
    rightMm: view.leftMm + view.widthPx / view.scale,
    bottomMm: view.topMm + view.heightPx / view.scale,
  };
}

function isInside(box: TextBox, view: LabelView): boolean {
  return box.x >= 0 && box.y >= 0 && box.x + box.width <= view.widthPx && box.y + box.height <= view.heightPx;
}

function touch(a: TextBox, b: TextBox): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

function* squares(box: TextBox): Generator<string> {
  for (let i = Math.floor(box.x / squarePx); i <= Math.floor((box.x + box.width) / squarePx); i++) {
    for (let j = Math.floor(box.y / squarePx); j <= Math.floor((box.y + box.height) / squarePx); j++) yield `${i} ${j}`;
  }
}

function* counted(count: number): Generator<number> {
  for (let i = 0; i < count; i++) yield i;
}
