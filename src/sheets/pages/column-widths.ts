import type { MeasuredTable } from './measure-table';

export interface ColumnWidths {
  /** Of each column, without the gap after it. */
  readonly columnsMm: readonly number[];
  readonly gapMm: number;
  readonly boxMm: number;
  readonly totalMm: number;
}

/** Between two columns. */
const columnGapMm = 3;
/** A box to tick or to sign with a pen, with the gap before it. */
const boxWidthMm = 13;
const mostBoxMm = 24;
/** No column wants more for itself. */
const wordsMm = 62;
/** A column takes so much more than it needs where there is room. */
const easeMm = 7;
/** Gaps and boxes take no more of the room. */
const mostFixedShare = 0.6;

/** Width at which a table stands with long words in a few lines and all else in one. */
export function easyWidthMm({ columns, boxes }: MeasuredTable): number {
  const wide = columns.reduce((sum, { naturalMm }) => sum + Math.min(naturalMm, wordsMm), 0);
  return wide + (columns.length - 1) * columnGapMm + boxes.length * boxWidthMm;
}

/**
 * Widths for a table in so much room: every cell in one line where it can be, with some ease; else long words are broken,
 * the widest columns first; else every column gives way by its share.
 */
export function columnWidths({ columns, boxes }: MeasuredTable, roomMm: number): ColumnWidths {
  const wanted = (columns.length - 1) * columnGapMm + boxes.length * boxWidthMm;
  const share = Math.min(1, (roomMm * mostFixedShare) / Math.max(wanted, 1));
  const fixed = wanted * share;
  const room = roomMm - fixed;
  const natural = columns.map(({ naturalMm }) => naturalMm);
  const least = columns.map(({ leastMm }) => leastMm);
  const columnsMm =
    sum(natural) <= room
      ? eased(natural, room)
      : sum(least) <= room
        ? between(least, natural, room)
        : squeezed(least, room);
  const widths = { columnsMm, gapMm: columnGapMm * share, boxMm: boxWidthMm * share, totalMm: sum(columnsMm) + fixed };
  return boxes.length === 0 ? widths : stretched(widths, boxes.length, roomMm);
}

/** A table to write into reaches across its room: wider boxes first, which stand under those of the table above, then a wider last column. */
function stretched({ columnsMm, gapMm, boxMm, totalMm }: ColumnWidths, boxes: number, roomMm: number): ColumnWidths {
  const wider = Math.max(0, Math.min(mostBoxMm - boxMm, (roomMm - totalMm) / boxes));
  const left = Math.max(0, roomMm - totalMm - wider * boxes);
  return {
    columnsMm: columnsMm.map((width, i) => (i === columnsMm.length - 1 ? width + left : width)),
    gapMm,
    boxMm: boxMm + wider,
    totalMm: totalMm + wider * boxes + left,
  };
}

const sum = (widths: readonly number[]) => widths.reduce((total, width) => total + width, 0);

function eased(natural: readonly number[], room: number): readonly number[] {
  const ease = natural.length === 0 ? 0 : Math.min(easeMm, (room - sum(natural)) / natural.length);
  return natural.map((width) => width + ease);
}

/** No column wider than a limit that is chosen so that all of them fill the room, none below its least. */
function between(least: readonly number[], natural: readonly number[], room: number): readonly number[] {
  return limited(natural, room, (width, limit, i) => Math.max(least[i]!, Math.min(width, limit)));
}

function squeezed(least: readonly number[], room: number): readonly number[] {
  return limited(least, room, (width, limit) => Math.min(width, limit));
}

/** Finds the highest limit at which the widths together have room. */
function limited(
  widths: readonly number[],
  room: number,
  cut: (width: number, limit: number, index: number) => number,
): readonly number[] {
  let low = 0;
  let high = Math.max(...widths);
  for (let step = 0; step < 40; step++) {
    const limit = (low + high) / 2;
    if (sum(widths.map((width, i) => cut(width, limit, i))) <= room) low = limit;
    else high = limit;
  }
  return widths.map((width, i) => cut(width, low, i));
}
