import type { RunLimits, WiringGrid } from '../wiring-grid';

/**
 * The same text for zones that are wired the same: shape, panels, places on the canvas from the zone's corner on, heights,
 * limits. Columns that repeat the one before, always as far from it, are counted.
 */
export function wiringKey(grid: WiringGrid, limits: RunLimits): string {
  const { columns, rows } = grid;
  const corner = cornerOf(grid);
  const parts = [
    `${columns}x${rows}`,
    `${grid.columnPitchMm}x${grid.rowPitchMm}`,
    `${limits.usablePixels},${limits.panelsMost},${limits.counting},${limits.reachMm},${limits.returns === true},${limits.lastObeysReach === true}`,
  ];
  for (let first = 0; first < columns; ) {
    const left = leftOf(grid, first, corner.left);
    let end = first + 1;
    let step = 0;
    while (end < columns && areAlike(grid, first, end)) {
      const next = leftOf(grid, end, corner.left) - leftOf(grid, end - 1, corner.left);
      if (end > first + 1 && next !== step) break;
      step = next;
      end++;
    }
    parts.push(`${end - first}@${left}+${step}*${textOf(grid, first, corner.left + left, corner.top)}`);
    first = end;
  }
  return parts.join('|');
}

function cornerOf({ present, pixelLeft, pixelTop }: WiringGrid): { readonly left: number; readonly top: number } {
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  for (let place = 0; place < present.length; place++) {
    if (present[place] === 0) continue;
    if (pixelLeft[place]! < left) left = pixelLeft[place]!;
    if (pixelTop[place]! < top) top = pixelTop[place]!;
  }
  return { left, top };
}

/** Left edge of a column's lowest panel from the corner on; 0 where it has none. */
function leftOf({ rows, present, pixelLeft }: WiringGrid, column: number, cornerLeft: number): number {
  for (let place = column * rows; place < (column + 1) * rows; place++) {
    if (present[place] === 1) return pixelLeft[place]! - cornerLeft;
  }
  return 0;
}

/** Whether two columns are the same but for where they stand on the canvas from left to right. */
function areAlike(grid: WiringGrid, one: number, other: number): boolean {
  const { rows, present, pixelLeft, pixelTop, pixelWidth, pixelHeight, entryHeightMm } = grid;
  const aside = leftOf(grid, other, 0) - leftOf(grid, one, 0);
  for (let row = 0; row < rows; row++) {
    const a = one * rows + row;
    const b = other * rows + row;
    if (present[a] !== present[b]) return false;
    if (present[a] === 0) continue;
    if (pixelLeft[b]! - pixelLeft[a]! !== aside || pixelTop[a] !== pixelTop[b]) return false;
    if (pixelWidth[a] !== pixelWidth[b] || pixelHeight[a] !== pixelHeight[b]) return false;
    if (entryHeightMm[a] !== entryHeightMm[b]) return false;
  }
  return true;
}

function textOf(grid: WiringGrid, column: number, left: number, top: number): string {
  const { rows, present, pixelLeft, pixelTop, pixelWidth, pixelHeight, entryHeightMm } = grid;
  let text = '';
  for (let place = column * rows; place < (column + 1) * rows; place++) {
    text +=
      present[place] === 0
        ? ';'
        : `${pixelLeft[place]! - left},${pixelTop[place]! - top},${pixelWidth[place]},${pixelHeight[place]},${entryHeightMm[place]};`;
  }
  return text;
}
