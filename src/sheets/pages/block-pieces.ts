import type { Block, TableBlock } from '../crew-set/crew-part';
import type { Format } from '../format';
import { codePieces } from './code-pieces';
import { easyWidthMm } from './column-widths';
import { type ContentsEntry, contentsPieces } from './contents-pieces';
import { figurePieces } from './figure-pieces';
import { type MeasuredTable, measureTable } from './measure-table';
import type { Piece } from './piece';
import { tablePieces } from './table-pieces';
import { textPieces } from './text-pieces';

/** Blocks with their tables measured once, to be tried in several widths. */
export interface MeasuredBlocks {
  /** Width at which every table has room. */
  readonly easyMm: number;
  readonly pieces: (widthMm: number) => readonly Piece[];
}

/** `contents`: what a block of contents lists. */
export function measureBlocks(
  blocks: readonly Block[],
  format: Format,
  contents: readonly ContentsEntry[],
): MeasuredBlocks {
  const tables = new Map<Block, MeasuredTable>(
    blocks
      .filter((block): block is TableBlock => block.kind === 'table')
      .map((block) => [block, measureTable(block, format)]),
  );
  const piecesOf = (block: Block, widthMm: number): readonly Piece[] => {
    switch (block.kind) {
      case 'table':
        return tablePieces(tables.get(block)!, widthMm);
      case 'text':
        return textPieces(block, widthMm);
      case 'figures':
        return figurePieces(block, widthMm);
      case 'qr':
        return codePieces(block, widthMm);
      case 'contents':
        return contentsPieces(contents, widthMm);
    }
  };
  return {
    easyMm: Math.max(0, ...[...tables.values()].map(easyWidthMm)),
    pieces: (widthMm) => blocks.flatMap((block) => piecesOf(block, widthMm)),
  };
}
