import type { PageItem } from '../../../src/sheets/pages/page';
import type { Piece } from '../../../src/sheets/pages/piece';

/** Pieces one under the other from (leftMm, 0), as on a page without end, with the height that they take. */
export function placed(
  pieces: readonly Piece[],
  leftMm = 0,
): { readonly items: readonly PageItem[]; readonly heightMm: number } {
  let y = 0;
  const items = pieces.flatMap((piece, i) => {
    y += i === 0 ? 0 : piece.spaceMm;
    const made = piece.place(leftMm, y);
    y += piece.heightMm;
    return made;
  });
  return { items, heightMm: y };
}
