import { fromMicrometres, toMicrometres } from '../../surfaces/micrometres';

/** So many columns or rows, and how long they are together. */
export interface WholeLines {
  readonly count: number;
  readonly lengthMm: number;
}

/** A wished length in whole lines, both ways; the same twice where it is whole already. */
export interface BothWays {
  /** The most that are no longer than the wish; null where one is longer already, and beyond `most`. */
  readonly down: WholeLines | null;
  /** The fewest that are no shorter; null beyond `most`. */
  readonly up: WholeLines | null;
}

/** Rounds a length to whole lines of `stepMm`, both ways, in whole micrometres; at most `most` lines. */
export function wholeLines(wishedMm: number, stepMm: number, most: number): BothWays {
  const wishedUm = toMicrometres(wishedMm);
  const stepUm = toMicrometres(stepMm);
  const rest = wishedUm % stepUm;
  const count = (wishedUm - rest) / stepUm;
  const lines = (many: number): WholeLines | null =>
    many >= 1 && many <= most ? { count: many, lengthMm: fromMicrometres(many * stepUm) } : null;
  return { down: lines(count), up: lines(rest === 0 ? count : count + 1) };
}
