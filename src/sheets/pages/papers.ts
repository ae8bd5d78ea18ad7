import table from '../../../shared/paper-sizes.json';

export type PaperId = 'a4' | 'a3' | 'letter' | 'tabloid';

/** A size of paper, upright, with the margins of the frame on it. */
export interface Paper {
  readonly id: PaperId;
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** On the left, where sheets are filed. */
  readonly filingMarginMm: number;
  readonly marginMm: number;
}

export const papers = table.sizes as readonly Paper[];

export function paperById(id: PaperId): Paper {
  return papers.find((paper) => paper.id === id)!;
}
