/** A length in mm to the micrometre: the last bit of a sine never shows in a file; never minus zero. */
export function wholeMicrometres(mm: number): number {
  return Math.round(mm * 1000) / 1000 + 0;
}
