import type { Dash, Pen, TextSize, Weight } from './drawing';

/**
 * How a drawing looks on paper, in millimetres of the paper. Widths of lines: the series of ISO 128-2 (0.18 0.25 0.35 0.5
 * 0.7), from memory. Heights of letters and lengths of dashes: common practice, no source. What differs by colour differs
 * by weight, dash or place too, so that black and white says the same.
 */
export const paperStyle = {
  pens: { ink: '#000000', soft: '#444444', faint: '#999999', accent: '#0b4fa8', limit: '#b00020' } satisfies Record<
    Pen,
    string
  >,
  sheet: '#ffffff',
  /** By number of the tint: light, so that everything reads on them. */
  tints: ['#c9e5ff', '#f7ecbe', '#c9efd9', '#ffd5d7', '#e8d5f7', '#ffddc1'],
  widthsMm: { cut: 0.7, heavy: 0.5, medium: 0.35, fine: 0.25, hair: 0.18 } satisfies Record<Weight, number>,
  /** Line and gap in turn. */
  dashesMm: { solid: [], dashed: [3, 2], chain: [7, 2, 1, 2] } satisfies Record<Dash, readonly number[]>,
  lettersMm: { small: 2, normal: 2.5, large: 3.5 } satisfies Record<TextSize, number>,
  /** Half the length of a dimension's tick, across and along. */
  tickMm: 1,
  /** Clear space round what is drawn, for the texts that stand outside. */
  marginMm: 15,
  /** What counts as a pixel where a drawing says from which scale on something is worth showing. */
  pixelsAMm: 5,
} as const;
