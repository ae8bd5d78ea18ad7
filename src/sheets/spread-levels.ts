/**
 * Heights for texts that stand beside what they name, at least `gapMm` apart, in the order given by `levelsMm` (rising): each at
 * its own height where there is room, else above the one below it.
 */
export function spreadLevels(levelsMm: readonly number[], gapMm: number): readonly number[] {
  let below = Number.NEGATIVE_INFINITY;
  return levelsMm.map((level) => {
    below = Math.max(level, below + gapMm);
    return below;
  });
}
