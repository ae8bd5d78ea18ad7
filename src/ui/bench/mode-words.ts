import type { Mode } from '../../plan/picture';
import { formatRate } from '../../units/format-rate';

/** A mode as it is said: '48 fps, 10 bit', with the pictures a frame where there are several. */
export function modeWords({ rate, depthBits, pictures }: Mode): string {
  const interleaved = pictures > 1 ? `, ${pictures} pictures a frame` : '';
  return `${formatRate(rate)} fps, ${depthBits} bit${interleaved}`;
}
