import type { TextSize } from '../../sheets/drawing';

/** Heights of a drawing's texts on screen, in pixels: the same at every zoom. */
export const textHeights: Readonly<Record<TextSize, number>> = { small: 10, normal: 11.5, large: 12.5 };
