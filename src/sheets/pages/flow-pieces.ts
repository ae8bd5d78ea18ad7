import type { Box } from '../drawing';
import type { PageItem } from './page';
import type { Piece } from './piece';

/** What stands on one page, and how far down it goes. */
export interface Flowed {
  readonly items: readonly PageItem[];
  readonly bottomMm: number;
}

/**
 * Stands pieces one under the other in columns from left to right, and on over the next pages. A page that nothing goes
 * into, such as what a drawing leaves of one, stays empty; pieces that want to stay together are torn only where no column
 * could hold them. `slotsOf` gives the columns of a page by its index; from the second page on a column holds any piece
 * with its head.
 */
export function flowPieces(pieces: readonly Piece[], slotsOf: (page: number) => readonly Box[]): readonly Flowed[] {
  const pages: Flowed[] = [];
  let items: PageItem[] = [];
  let page = 0;
  let slot = 0;
  let slots = slotsOf(0);
  let y = slots[0]?.topMm ?? 0;
  let isFresh = true;
  let bottomMm = y;
  const mostMm = Math.max(...slotsOf(1).map(({ topMm, bottomMm: footMm }) => footMm - topMm));

  const turnOver = () => {
    pages.push({ items, bottomMm });
    items = [];
    slots = slotsOf(++page);
    slot = 0;
    y = slots[0]!.topMm;
    bottomMm = y;
    isFresh = true;
  };
  const next = () => {
    if (slot + 1 >= slots.length) return turnOver();
    y = slots[++slot]!.topMm;
    isFresh = true;
  };

  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i]!;
    const above = () => (isFresh ? (piece.head?.heightMm ?? 0) : piece.spaceMm);
    const fits = (heightMm: number) => slot < slots.length && y + above() + heightMm <= slots[slot]!.bottomMm + 1e-6;
    const chainMm = chainHeightMm(pieces, i);
    const wantedMm = chainMm + (piece.head?.heightMm ?? 0) <= mostMm ? chainMm : piece.heightMm;
    while (!fits(wantedMm) && !(isFresh && page > 0)) next();
    const { leftMm } = slots[slot]!;
    if (isFresh && piece.head !== null) items.push(...piece.head.place(leftMm, y));
    y += above();
    items.push(...piece.place(leftMm, y));
    y += piece.heightMm;
    bottomMm = Math.max(bottomMm, y);
    isFresh = false;
  }
  if (items.length > 0) pages.push({ items, bottomMm });
  return pages;
}

/** Of a piece and those that it must not be parted from. */
function chainHeightMm(pieces: readonly Piece[], first: number): number {
  let height = pieces[first]!.heightMm;
  for (let i = first; pieces[i]!.withNext && i + 1 < pieces.length; i++) {
    height += pieces[i + 1]!.spaceMm + pieces[i + 1]!.heightMm;
  }
  return height;
}
