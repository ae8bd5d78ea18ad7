import type { Box, Lines } from '../drawing';

/**
 * One side of a sheet as plain data: millimetres from its upper left corner, y down, to the micrometre, painted in the
 * order of items. The PDF, the screen and the browser's print show the same pages.
 */
export interface Page {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly title: string;
  /** Part of the set that it belongs to. */
  readonly partId: string;
  readonly items: readonly PageItem[];
}

export type PageItem = PagePath | PageText | PageLink;

export interface PagePath {
  readonly kind: 'path';
  /** In millimetres of the paper. */
  readonly lines: Lines;
  /** '#rrggbb', by the nonzero winding rule; null: not filled. */
  readonly fill: string | null;
  readonly stroke: PageStroke | null;
}

export interface PageStroke {
  readonly colour: string;
  readonly widthMm: number;
  /** Line and gap in turn; empty: drawn through. */
  readonly dashesMm: readonly number[];
}

/** Faces that are printed: text, headings, and figures in a face of fixed width. */
export type PageFace = 'sans' | 'strong' | 'mono';

export interface PageText {
  readonly kind: 'text';
  /** Signs of its face only, without kerning or ligatures. */
  readonly text: string;
  /** Where the text begins, has its middle or ends, on its baseline. */
  readonly xMm: number;
  readonly yMm: number;
  /** Height of the em. */
  readonly sizeMm: number;
  readonly face: PageFace;
  readonly align: 'start' | 'middle' | 'end';
  /** Read from the right, upwards. */
  readonly turned: boolean;
  readonly colour: string;
  /** A rim of the paper's colour keeps lines off the letters. */
  readonly rim: boolean;
}

/** A place on the page that leads somewhere. */
export interface PageLink {
  readonly kind: 'link';
  readonly box: Box;
  readonly url: string;
}
