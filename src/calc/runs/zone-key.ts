import type { RunLimits, WiringGrid } from './wiring-grid';

/** Text that is equal for zones of equal shape with equal limits, and for no others. */
export function zoneKey(grid: WiringGrid, limits: RunLimits): string {
  const { columns, rows, columnPitchMm, rowPitchMm, present } = grid;
  const places: number[] = [];
  for (let place = 0; place < present.length; place++) {
    if (present[place] === 0) places.push(-1);
    else {
      places.push(
        grid.pixelLeft[place]!,
        grid.pixelTop[place]!,
        grid.pixelWidth[place]!,
        grid.pixelHeight[place]!,
        grid.entryHeightMm[place]!,
      );
    }
  }
  const { usablePixels, panelsMost, counting, reachMm, lastObeysReach = false } = limits;
  const rest = [columns, rows, columnPitchMm, rowPitchMm, usablePixels, panelsMost, counting, reachMm, lastObeysReach];
  return `${rest.join(' ')}|${places.join(' ')}`;
}
