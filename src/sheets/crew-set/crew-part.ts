import type { Drawing } from '../drawing';
import type { Schedule } from '../schedule';

/** What the reader may print or leave out, in the order in which it stands in the set. */
export type CrewPartId =
  | 'cover'
  | 'changes'
  | 'bill'
  | 'from-behind'
  | 'from-inside'
  | 'ceiling-below'
  | 'ceiling-above'
  | 'zones'
  | 'ports'
  | 'circuits'
  | 'counts'
  | 'from-above'
  | 'elevation'
  | 'check-sheet'
  | 'commissioning';

/** A part of the crew set, such as 'Circuits by distro', on sheets that follow one another. */
export interface CrewPart {
  readonly id: CrewPartId;
  readonly title: string;
  readonly sheets: readonly CrewSheet[];
}

/** What begins on a page of its own and may run on over more. */
export type CrewSheet = DrawingSheet | BlocksSheet;

export interface DrawingSheet {
  readonly kind: 'drawing';
  readonly title: string;
  /** For the title block, 'drawn from behind'; null where no side is meant. */
  readonly side: string | null;
  /** Of calc's cautions the one that concerns the sheet, for its title blocks; null: none does. */
  readonly caution: string | null;
  /** The drawing for paper at 1 : `reduction`, to go with its letters into `room`; asked again for other scales. */
  readonly draw: (reduction: number, room: Room) => Drawing;
  /** Scales 1 : n to try, the largest picture first: the first that fits the page is taken, else the last. */
  readonly reductions: readonly number[];
  /** Under the drawing as far as there is room, then over the next pages. */
  readonly under: readonly Block[];
}

/** Of the paper, in millimetres of it. */
export interface Room {
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface BlocksSheet {
  readonly kind: 'blocks';
  readonly title: string;
  readonly side: string | null;
  /** Of calc's cautions the one that concerns the sheet, for its title blocks; null: none does. */
  readonly caution: string | null;
  readonly blocks: readonly Block[];
}

export type Block = TableBlock | TextBlock | FiguresBlock | CodeBlock | ContentsBlock;

export interface TableBlock {
  readonly kind: 'table';
  readonly title: string;
  readonly schedule: Schedule;
  /** Heads of boxes that are left empty at the end of each row, to tick or to sign. */
  readonly boxes?: readonly string[];
}

export interface TextBlock {
  readonly kind: 'text';
  readonly style: 'title' | 'lead' | 'body' | 'caution';
  readonly text: string;
}

/** Figures with their names, as on the first page. */
export interface FiguresBlock {
  readonly kind: 'figures';
  readonly entries: readonly { readonly name: string; readonly value: string }[];
}

/** A code to scan, and what it leads to. */
export interface CodeBlock {
  readonly kind: 'qr';
  readonly url: string;
  readonly caption: string;
}

/** Titles of the sheets with their numbers, known when all pages are laid out. */
export interface ContentsBlock {
  readonly kind: 'contents';
}
