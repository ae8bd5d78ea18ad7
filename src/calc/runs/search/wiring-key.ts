import type { RunLimits, WiringGrid } from '../wiring-grid';

/**
 * The same text for zones that are wired the same: shape, panels, places on the canvas from the zone's corner on, heights,
 * limits. Columns that repeat the one before are counted.
 */
export function wiringKey(grid: WiringGrid, limits: RunLimits): string {
  const { columns, rows, present, pixelLeft, pixelTop, pixelWidth, pixelHeight, entryHeightMm } = grid;
  let top = Number.POSITIVE_INFINITY;
  for (let place = 0; place < present.length; place++) {
    if (present[place] === 1) top = Math.min(top, pixelTop[place]!);
  }
  const parts = [
    `${columns}x${rows}`,
    `${grid.columnPitchMm}x${grid.rowPitchMm}`,
    `${limits.usablePixels},${limits.panelsMost},${limits.counting},${limits.reachMm},${limits.lastObeysReach === true}`,
  ];
  let last = '';
  let times = 0;
  let origin: number | null = null;
  for (let column = 0; column < columns; column++) {
    let text = '';
    let left: number | null = null;
    for (let place = column * rows; place < (column + 1) * rows; place++) {
      if (present[place] === 0) {
        text += ';';
        continue;
      }
      left ??= pixelLeft[place]!;
      origin ??= left;
      text += `${pixelLeft[place]! - left},${pixelTop[place]! - top},${pixelWidth[place]},${pixelHeight[place]},${entryHeightMm[place]};`;
    }
    // A step of the canvas from column to column that stays the same keeps columns alike.
    const step = left === null ? '' : `@${left - origin!}`;
    origin = left ?? origin;
    text += step;
    if (text === last) {
      times++;
      continue;
    }
    if (times > 0) parts.push(`${times}*${last}`);
    last = text;
    times = 1;
  }
  if (times > 0) parts.push(`${times}*${last}`);
  return parts.join('|');
}
