import { noTint } from '../../../sheets/tint-panels';

/** Red, green and blue in linear light. */
export type Rgb = readonly [number, number, number];

/** Colour of every instance, three numbers each: its tint, or plain card. */
export function tintColours(
  tints: Uint8Array,
  from: number,
  count: number,
  palette: readonly Rgb[],
  card: Rgb,
): Float32Array {
  const colours = new Float32Array(count * 3);
  for (let i = 0; i < count; i++) {
    const tint = tints[from + i]!;
    const colour = tint === noTint ? card : (palette[tint] ?? card);
    colours.set(colour, i * 3);
  }
  return colours;
}
