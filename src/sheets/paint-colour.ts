import type { Fill } from './drawing';
import { paperStyle } from './paper-style';

/** Colour of a fill, '#rrggbb'. */
export function paintColour(paint: Fill['paint']): string {
  if (typeof paint === 'number') return paperStyle.tints[paint % paperStyle.tints.length]!;
  return paint === 'sheet' ? paperStyle.sheet : paperStyle.pens[paint];
}
