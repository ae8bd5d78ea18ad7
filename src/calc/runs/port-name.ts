/** A, B, .. Z, AA, AB, ..: the letter of the breakout with this number from 0. */
export function breakoutLetter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : breakoutLetter(Math.floor(index / 26) - 1) + last;
}

/**
 * Tag of a processor's port, counted from 0 through its breakouts: '3B-04' is processor 3, breakout B, port 4; '3-04' on a
 * processor with direct ports (`portsABreakout` null).
 */
export function portName(processor: number, index: number, portsABreakout: number | null): string {
  const padded = (port: number) => String(port).padStart(2, '0');
  if (portsABreakout === null || portsABreakout < 1) return `${processor}-${padded(index + 1)}`;
  const breakout = Math.floor(index / portsABreakout);
  return `${processor}${breakoutLetter(breakout)}-${padded((index % portsABreakout) + 1)}`;
}
