import { faceWidths } from './face-widths';
import type { PageFace } from './page';

/** Width of a printable text in mm, without kerning or ligatures, as it is printed. */
export function textWidthMm(text: string, face: PageFace, sizeMm: number): number {
  const widths = faceWidths[face];
  let sum = 0;
  for (let i = 0; i < text.length; i++) sum += widths[text.charCodeAt(i)]!;
  return (sum * sizeMm) / 1000;
}
