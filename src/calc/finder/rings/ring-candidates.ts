import { degrees, toRadians } from '../../../units/angle';

/** A ring as joints: `columns` columns, whose joints are `lowDeg`, and `highs` of them `highDeg`. */
export interface RingCandidate {
  readonly columns: number;
  readonly lowDeg: number;
  readonly highDeg: number;
  readonly highs: number;
}

export interface RingWish {
  /** Wished inside diameter. */
  readonly acrossMm: number;
  /** Wished gap between the ends; 0 for a closed ring. */
  readonly openingMm: number;
  readonly columnWidthMm: number;
}

/** Fewest columns that close round anything, and most of one segment. */
const FEWEST = 3;
const MOST = 5000;

/** A ring that turns half a turn or more and does not run past its own first column, by its mean joint. */
function isRing({ columns, lowDeg, highDeg, highs }: RingCandidate): boolean {
  const turnsDeg = (columns - 1 - highs) * lowDeg + highs * highDeg;
  return turnsDeg >= 180 - 1e-9 && (turnsDeg * columns) / (columns - 1) <= 360 + 1e-9;
}

/**
 * Rings near a wish: every whole step next to the joint that the diameter asks for, and mixtures of the two steps that it
 * lies between. Columns are searched `reach` either way of the count at which diameter and opening would both be met,
 * joints so far either way of what meets the one or the other. Steps below zero bend away and make no ring.
 */
export function ringCandidates(
  wish: RingWish,
  lockStepsDeg: readonly number[],
  reach: number,
): readonly RingCandidate[] {
  const steps = [...new Set(lockStepsDeg)].filter((step) => step >= 0).sort((a, b) => a - b);
  const askedDeg = (2 * Math.atan(wish.columnWidthMm / wish.acrossMm) * 180) / Math.PI;
  const low = steps.findLast((step) => step <= askedDeg);
  const high = steps.find((step) => step >= askedDeg);
  const whole = [...new Set([low, high])].filter((step): step is number => step !== undefined && step > 0);
  const found = whole.flatMap((stepDeg) => wholeStepRings(wish, stepDeg, reach));
  if (low === undefined || high === undefined || low === high) return found;
  return [...found, ...mixedRings(wish, low, high, askedDeg, reach)];
}

/** Columns around which a ring of this mean joint has the wished opening. */
function columnsFor({ openingMm, columnWidthMm }: RingWish, jointDeg: number): number {
  const radius = columnWidthMm / (2 * Math.sin(toRadians(degrees(jointDeg / 2))));
  const openDeg = (2 * Math.asin(Math.min(1, openingMm / (2 * radius))) * 180) / Math.PI;
  return (360 - openDeg) / jointDeg;
}

function wholeStepRings(wish: RingWish, stepDeg: number, reach: number): RingCandidate[] {
  return counts(columnsFor(wish, stepDeg), reach)
    .map((columns) => ({ columns, lowDeg: stepDeg, highDeg: stepDeg, highs: 0 }))
    .filter(isRing);
}

function mixedRings(wish: RingWish, lowDeg: number, highDeg: number, askedDeg: number, reach: number): RingCandidate[] {
  const openDeg = 360 - columnsFor(wish, askedDeg) * askedDeg;
  return counts(columnsFor(wish, askedDeg), reach).flatMap((columns) => {
    const joints = columns - 1;
    const highsFor = (meanDeg: number) => ((meanDeg - lowDeg) * joints) / (highDeg - lowDeg);
    const ends = [highsFor(askedDeg), highsFor((360 - openDeg) / columns)];
    const from = Math.max(1, Math.floor(Math.min(...ends)) - 1);
    const to = Math.min(joints - 1, Math.ceil(Math.max(...ends)) + 1);
    const rings: RingCandidate[] = [];
    for (let highs = from; highs <= to; highs++) rings.push({ columns, lowDeg, highDeg, highs });
    return rings.filter(isRing);
  });
}

function counts(middle: number, reach: number): number[] {
  const from = Math.max(FEWEST, Math.floor(middle) - reach);
  const to = Math.min(MOST, Math.ceil(middle) + reach);
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
}
