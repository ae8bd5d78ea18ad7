import { cutStrips } from '../cut-strips';
import type { LatticePart } from '../unrolled-grid';
import type { Room } from './crew-part';
import { standardReductions } from './standard-reductions';

/** A surface, or a part of it, that is to be drawn. */
export interface DrawnArea {
  readonly part: LatticePart;
  readonly columnWidthMm: number;
  /** Height of so many rows from one on, with what lies under them down to the floor. */
  readonly heightMm: (firstRow: number, rows: number) => number;
  /** Cost of a cut between this column of the surface and the next, as `cutStrips` has it. */
  readonly cutCost: (column: number) => number;
}

/** Clear space on paper: above and below each strip, beside the widest, and over and under them all. */
export interface SheetSpace {
  readonly aboveMm: number;
  readonly belowMm: number;
  readonly besideMm: number;
  readonly roundMm: number;
  /** Of what is beside: for the tags of cables that come from there. */
  readonly tagsMm: number;
}

export interface CutSheets {
  /** What each sheet shows, by columns and then by rows, from the lowest numbers on. */
  readonly parts: readonly LatticePart[];
  /** Scales 1 : n at which each has room and a panel is wide enough, the largest picture first. */
  readonly reductions: readonly number[];
}

/** Columns side by side in one strip on so wide a paper at 1 : `reduction`. */
export function columnsAcross(
  { columnWidthMm }: Pick<DrawnArea, 'columnWidthMm'>,
  { besideMm }: Pick<SheetSpace, 'besideMm'>,
  { widthMm }: Pick<Room, 'widthMm'>,
  reduction: number,
): number {
  return Math.max(1, Math.floor(((widthMm - besideMm) * reduction) / columnWidthMm + 1e-9));
}

/**
 * Cuts an area into what one sheet each can show with panels at least so wide on paper. One sheet where it has room for all,
 * in strips one under the other if need be; else sheets of about equal numbers of columns, and of rows where one strip is too
 * high, at the smallest scale that keeps panels wide enough. `rooms`: of the paper as it may lie; the one that takes fewest
 * sheets, and of those the one with the largest picture.
 */
export function cutToSheets(
  area: DrawnArea,
  space: SheetSpace,
  rooms: readonly [Room, ...Room[]],
  leastPanelMm: number,
): CutSheets {
  const [first, ...others] = rooms.map((room) => cutToRoom(area, space, room, leastPanelMm));
  return others.reduce((best, cut) => {
    const fewer = cut.parts.length - best.parts.length;
    return fewer < 0 || (fewer === 0 && cut.reductions[0]! < best.reductions[0]!) ? cut : best;
  }, first!);
}

function cutToRoom(area: DrawnArea, space: SheetSpace, room: Room, leastPanelMm: number): CutSheets {
  const { part } = area;
  const wideEnough = standardReductions.filter((reduction) => area.columnWidthMm / reduction >= leastPanelMm - 1e-9);
  const reductions = wideEnough.length === 0 ? [standardReductions[0]] : wideEnough;
  const stripsOn = (reduction: number, rows: number) =>
    Math.floor(
      (room.heightMm - space.roundMm) /
        (area.heightMm(part.firstRow, rows) / reduction + space.aboveMm + space.belowMm),
    );
  const isOne = (reduction: number) =>
    Math.ceil(part.columns / columnsAcross(area, space, room, reduction)) <= stripsOn(reduction, part.rows);
  const whole = reductions.filter(isOne);
  if (whole.length > 0) return { parts: [part], reductions: whole };

  const smallest = reductions.at(-1)!;
  const across = columnsAcross(area, space, room, smallest);
  const strips = stripsOn(smallest, part.rows);
  const up = strips > 0 ? part.rows : rowsUp(area, (rows) => stripsOn(smallest, rows) > 0);
  const widest = across * Math.max(1, strips);
  const columns = cutStrips(
    part.columns,
    Math.ceil(part.columns / widest),
    'inside',
    (column) => area.cutCost(part.firstColumn - 1 + column),
    widest,
  );
  const bands = cutStrips(part.rows, Math.ceil(part.rows / up), 'inside', () => 0, up);
  return {
    parts: columns.flatMap((cut) =>
      bands.map((band) => ({
        firstColumn: part.firstColumn - 1 + cut.firstColumn,
        columns: cut.columns,
        firstRow: part.firstRow - 1 + band.firstColumn,
        rows: band.columns,
      })),
    ),
    reductions: [smallest],
  };
}

/** Most rows that have room, one at least. */
function rowsUp({ part }: DrawnArea, hasRoom: (rows: number) => boolean): number {
  let rows = part.rows;
  while (rows > 1 && !hasRoom(rows)) rows -= 1;
  return rows;
}
