import type { PageItem } from './page';

/** A stretch of a block that stays in one piece: a line of text, a row of a table. */
export interface Piece {
  readonly heightMm: number;
  /** Clear space above it, where something stands above it. */
  readonly spaceMm: number;
  /** Not left alone at the foot of a page: the next piece stands under it. */
  readonly withNext: boolean;
  /** Repeated above it where it begins a page or a column. */
  readonly head: Pick<Piece, 'heightMm' | 'place'> | null;
  readonly place: (leftMm: number, topMm: number) => readonly PageItem[];
}
