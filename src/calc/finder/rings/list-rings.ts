import { degrees, toRadians } from '../../../units/angle';
import { pathJoints, type SegmentForm } from '../../walls/path-joints';
import { shapePath } from '../../walls/shape-path';
import { type RingCandidate, ringCandidates } from './ring-candidates';

export interface RingGiven {
  /** Wished inside diameter. */
  readonly acrossMm: number;
  /** Wished gap between the ends; 0 for a closed ring. */
  readonly openingMm: number;
  readonly columnWidthMm: number;
  readonly depthMm: number;
  readonly lockStepsDeg: readonly number[];
}

/** A ring that can be built, measured by walking it as a wall is walked. */
export interface RingBuild {
  readonly columns: number;
  /** The path of its wall, still without ids. */
  readonly path: readonly SegmentForm[];
  readonly insideDiameterMm: number;
  readonly openingMm: number;
  readonly turnsDeg: number;
  /** Worst distance of a column's face from the circle of best fit. */
  readonly worstMm: number;
  /**
   * What the list is ranked by: how far the diameter and the opening miss the wish, a narrower opening counted twice, and
   * how far the ring is out of round, counted on both sides.
   */
  readonly missMm: number;
}

/** Ends that overlap by less than this touch. */
const TOUCH_MM = 0.5;

/**
 * The buildable rings nearest to a wish, at most `howMany`, best first: by what they miss (to the micrometre), then whole
 * steps before mixed joints, then fewer columns. With more than one asked, the nearest ring of whole steps is always
 * among them, last where it would not be otherwise. Empty where the lock bends no ring, or one of too many columns.
 */
export function listRings(given: RingGiven, howMany: number): readonly RingBuild[] {
  const likely = ringCandidates(given, given.lockStepsDeg, howMany + 3)
    .map((candidate) => ({ candidate, missMm: estimatedMiss(given, candidate) }))
    .sort((a, b) => a.missMm - b.missMm);
  const isWhole = ({ candidate }: (typeof likely)[number]) => candidate.highs === 0;
  const walked = [
    ...likely.filter(isWhole).slice(0, 4),
    ...likely.filter((one) => !isWhole(one)).slice(0, 2 * howMany + 4),
  ];
  const ranked = walked.flatMap(({ candidate }) => build(given, candidate) ?? []).sort(byRank);
  const best = ranked.slice(0, howMany);
  const whole = ranked.find((ring) => ring.path[0]!.mixed === null);
  if (howMany > 1 && whole !== undefined && !best.includes(whole)) best[howMany - 1] = whole;
  return best;
}

function missOf({ acrossMm, openingMm }: RingGiven, insideMm: number, gapMm: number, worstMm: number): number {
  const opening = gapMm < openingMm ? 2 * (openingMm - gapMm) : gapMm - openingMm;
  return Math.abs(insideMm - acrossMm) + opening + 2 * worstMm;
}

/** The miss of a ring of even joints as wide as the mean, near enough to choose which rings to walk. */
function estimatedMiss(given: RingGiven, { columns, lowDeg, highDeg, highs }: RingCandidate): number {
  const meanDeg = ((columns - 1 - highs) * lowDeg + highs * highDeg) / (columns - 1);
  const half = toRadians(degrees(meanDeg / 2));
  const gapMm = (given.columnWidthMm / Math.sin(half)) * Math.sin(toRadians(degrees((360 - columns * meanDeg) / 2)));
  return missOf(given, given.columnWidthMm / Math.tan(half), Math.max(0, gapMm), 0);
}

function build(given: RingGiven, candidate: RingCandidate): RingBuild | null {
  const { columnWidthMm, depthMm } = given;
  const path = [segmentOf(candidate)];
  const jointDeg = pathJoints(path);
  const place = { turnDeg: 0, xMm: 0, yMm: 0 };
  // Every joint of a ring is concave, so that no front stands apart.
  const shape = shapePath({ jointDeg, columnWidthMm, depthMm, unbevelledMm: 0, ...place });
  const { frontMm, bestFit, insideDiameterMm, openingMm } = shape;
  if (bestFit === null || insideDiameterMm === null || openingMm === null) return null;
  // Unturned, the wall runs from left to right round the top: its last end lies on the right of its first.
  if (frontMm[frontMm.length - 2]! - frontMm[0]! < -TOUCH_MM) return null;
  return {
    columns: candidate.columns,
    path,
    insideDiameterMm,
    openingMm,
    turnsDeg: shape.turnsDeg,
    worstMm: bestFit.worstMm,
    missMm: missOf(given, insideDiameterMm, openingMm, bestFit.worstMm),
  };
}

/** The angle that most joints take, and the other mixed in. */
function segmentOf({ columns, lowDeg, highDeg, highs }: RingCandidate): SegmentForm {
  const lows = columns - 1 - highs;
  const [jointDeg, other, count] = highs > lows ? [highDeg, lowDeg, lows] : [lowDeg, highDeg, highs];
  return { columns, jointDeg, mixed: count === 0 ? null : { jointDeg: other, count }, jointBeforeDeg: 0 };
}

function byRank(a: RingBuild, b: RingBuild): number {
  const miss = Math.round(a.missMm * 1000) - Math.round(b.missMm * 1000);
  const mixed = Number(a.path[0]!.mixed !== null) - Number(b.path[0]!.mixed !== null);
  return miss || mixed || a.columns - b.columns;
}
