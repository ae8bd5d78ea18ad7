import type { WayOfWiring } from '../../plan/hand-change';
import type { Quantity } from '../chapter';

/** A way of wiring as the beginning of a sentence, and the figures that its tokens stand for. */
export interface WayInWords {
  readonly words: string;
  readonly values: Readonly<Record<string, Quantity>>;
}

export function wayInWords(way: WayOfWiring): WayInWords {
  switch (way.kind) {
    case 'columns':
      return { words: 'A run for every column', values: {} };
    case 'folded':
      return { words: 'Folding runs over {wide} columns', values: { wide: { value: way.wide, unit: 'count' } } };
    case 'split':
      return {
        words:
          way.wide === 1
            ? 'Splitting above row {row}'
            : 'Splitting above row {row} and folding over {wide} columns below',
        values: { row: { value: way.aboveRow, unit: 'count' }, wide: { value: way.wide, unit: 'count' } },
      };
    case 'rows':
      return { words: 'Wiring along rows', values: {} };
    case 'free':
      return { words: 'An irregular wiring', values: {} };
  }
}
