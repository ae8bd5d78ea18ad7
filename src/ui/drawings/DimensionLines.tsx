import { memo } from 'react';
import type { Dimension } from '../../sheets/drawing';
import type { View } from './view';

const tickPx = 4.5;

/** Dimension lines in pixels of the window, with slanted ticks that keep their size. Their texts come with the labels. */
export const DimensionLines = memo(function DimensionLines({
  dimensions,
  view,
}: {
  readonly dimensions: readonly Dimension[];
  readonly view: View;
}) {
  const d = dimensions.map((dimension) => {
    const x1 = (dimension.x1Mm - view.leftMm) * view.scale;
    const y1 = (dimension.y1Mm - view.topMm) * view.scale;
    const x2 = (dimension.x2Mm - view.leftMm) * view.scale;
    const y2 = (dimension.y2Mm - view.topMm) * view.scale;
    const length = Math.hypot(x2 - x1, y2 - y1) || 1;
    const ux = (x2 - x1) / length;
    const uy = (y2 - y1) / length;
    const tick = (x: number, y: number) => {
      const dx = (ux - uy) * tickPx;
      const dy = (uy + ux) * tickPx;
      return `M${round(x - dx)} ${round(y - dy)}L${round(x + dx)} ${round(y + dy)}`;
    };
    const over = tickPx;
    return `M${round(x1 - ux * over)} ${round(y1 - uy * over)}L${round(x2 + ux * over)} ${round(y2 + uy * over)}${tick(x1, y1)}${tick(x2, y2)}`;
  });
  return <path className="sheet-line pen-ink weight-fine dash-solid" d={d.join('')} />;
});

const round = (px: number) => Math.round(px * 10) / 10;
