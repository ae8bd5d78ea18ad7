import type { BandOfPanels, ZoneCase } from './zone-case';

/** Panels of one width in metal and of several heights and pixel pitches, invented. */
const panels = [
  { pixelsWide: 216, pixelsHigh: 216, heightMm: 500 },
  { pixelsWide: 216, pixelsHigh: 432, heightMm: 1000 },
  { pixelsWide: 216, pixelsHigh: 108, heightMm: 250 },
  { pixelsWide: 144, pixelsHigh: 144, heightMm: 500 },
  { pixelsWide: 144, pixelsHigh: 288, heightMm: 1000 },
  { pixelsWide: 288, pixelsHigh: 288, heightMm: 500 },
] as const;

export interface CaseSize {
  readonly columns: readonly [least: number, most: number];
  readonly rows: readonly [least: number, most: number];
  /** Panels on a port at most. */
  readonly panelsAPort: readonly [least: number, most: number];
}

/**
 * A zone with what makes wiring hard, each by chance: holes, odd edges (columns begun higher or ended lower than the rest, as
 * over a doorway or under a slope), bands of other panels, a limit of panels beside that of pixels, reach, returns.
 */
export function randomCase(randomBits: () => number, size: CaseSize): ZoneCase {
  const below = (most: number) => (randomBits() >>> 8) % most;
  const between = ([least, most]: readonly [number, number]) => least + below(most - least + 1);
  const columns = between(size.columns);
  const rows = between(size.rows);
  const bands = randomBands(below, rows);
  const holes = randomHoles(below, columns, rows);
  const mean = bands.reduce((sum, band) => sum + band.rows * band.pixelsWide * band.pixelsHigh, 0) / rows;
  const aPort = between(size.panelsAPort);
  // One in five ports is smaller than some panel, or just about.
  const usablePixels = Math.floor(
    mean * aPort * (bands.length > 1 && below(5) === 0 ? 0.5 : 1) + mean * 0.25 * below(4),
  );
  const heightMm = bands.reduce((sum, band) => sum + band.rows * band.heightMm, 0);
  return {
    columns,
    bands,
    holes,
    usablePixels,
    panelsMost: below(3) === 0 || bands.length > 1 ? between(size.panelsAPort) : 1000,
    counting: below(2) === 0 ? 'panels' : 'rectangle',
    reachMm: below(6) === 0 ? null : Math.floor((heightMm * below(8)) / 8) + 100,
    returns: below(3) === 0,
  };
}

/** One to three bands. */
function randomBands(below: (most: number) => number, rows: number): BandOfPanels[] {
  const bands: BandOfPanels[] = [];
  const most = below(2) === 0 ? 1 : Math.min(3, rows);
  for (let left = rows; left > 0; ) {
    const own = bands.length + 1 === most ? left : 1 + below(left);
    bands.push({ rows: own, ...panels[most === 1 ? 0 : below(panels.length)]! });
    left -= own;
  }
  return bands;
}

function randomHoles(below: (most: number) => number, columns: number, rows: number): number[] {
  const rarity = [0, 0, 20, 10, 5][below(5)]!;
  const odd = below(3) === 0;
  const holes: number[] = [];
  for (let column = 0; column < columns; column++) {
    const foot = odd && below(3) === 0 ? below(rows) : 0;
    const top = odd && below(3) === 0 ? rows - below(rows) : rows;
    for (let row = 0; row < rows; row++) {
      const isHole = rarity > 0 && below(rarity) === 0;
      if (isHole || row < foot || row >= top) holes.push(column * rows + row);
    }
  }
  return holes.length < columns * rows ? holes : holes.slice(1);
}
