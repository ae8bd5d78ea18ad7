import type { Ceiling, Outline } from '../../plan/ceiling';
import { MOST_PLACES } from '../surfaces/size-limits';
import { circleSide } from './circle-side';
import { clipToPolygon } from './clip-to-polygon';
import { holeWindow } from './hole-window';
import { type Lattice, toHalves } from './lattice';
import { type Bounds, type LatticeWindow, windowOver } from './lattice-window';

/** The places that hold a panel, trimmed to their own columns and rows: 1 in `kept` at i * rows + j. */
export interface ClippedLattice extends LatticeWindow {
  readonly kept: Uint8Array;
  readonly count: number;
}

/**
 * Clips a lattice to a ceiling's outline by its rule, and takes its holes away; all in whole half micrometres. A whole
 * panel may touch the outline; a part counts only inside it. Holes take every panel that reaches into them, whatever
 * the rule. Null where the lattice has more than MOST_PLACES places under the outline.
 */
export function clipCeiling(
  ceiling: Pick<Ceiling, 'outline' | 'rule' | 'holes'>,
  lattice: Lattice,
): ClippedLattice | null {
  const window = windowOver(lattice, boundsOf(ceiling.outline));
  const { columns, rows } = window;
  if (columns * rows > MOST_PLACES) return null;
  const kept = clipToOutline(ceiling, lattice, window);
  for (const hole of ceiling.holes) {
    const over = holeWindow(hole, lattice);
    const fromI = Math.max(0, over.firstI - window.firstI);
    const toI = Math.min(columns, over.firstI + over.columns - window.firstI);
    const fromJ = Math.max(0, over.firstJ - window.firstJ);
    const toJ = Math.min(rows, over.firstJ + over.rows - window.firstJ);
    for (let i = fromI; i < toI; i++) if (toJ > fromJ) kept.fill(0, i * rows + fromJ, i * rows + toJ);
  }
  return trim(window, kept);
}

function boundsOf(outline: Outline): Bounds {
  if (outline.kind === 'polygon') {
    const us = outline.points.map((point) => -toHalves(point.xMm));
    const vs = outline.points.map((point) => toHalves(point.yMm));
    return { fromU: Math.min(...us), toU: Math.max(...us), fromV: Math.min(...vs), toV: Math.max(...vs) };
  }
  const [width, depth] =
    outline.kind === 'circle' ? [outline.diameterMm, outline.diameterMm] : [outline.widthMm, outline.depthMm];
  const u = toHalves(width) / 2;
  const v = toHalves(depth) / 2;
  return { fromU: -u, toU: u, fromV: -v, toV: v };
}

function clipToOutline({ outline, rule }: Pick<Ceiling, 'outline' | 'rule'>, lattice: Lattice, window: LatticeWindow) {
  if (outline.kind === 'polygon') {
    const points = outline.points.map(({ xMm, yMm }) => [-toHalves(xMm), toHalves(yMm)] as const);
    return clipToPolygon(points, rule, lattice, window);
  }
  const keeps =
    outline.kind === 'circle'
      ? circleKeeps(toHalves(outline.diameterMm) / 2, rule)
      : rectangleKeeps(boundsOf(outline), rule);
  const { columns, rows } = window;
  const kept = new Uint8Array(columns * rows);
  for (let i = 0; i < columns; i++) {
    const fromU = lattice.startU + (window.firstI + i) * lattice.stepU;
    for (let j = 0; j < rows; j++) {
      const fromV = lattice.startV + (window.firstJ + j) * lattice.stepV;
      if (keeps(fromU, fromU + lattice.stepU, fromV, fromV + lattice.stepV)) kept[i * rows + j] = 1;
    }
  }
  return kept;
}

type Keeps = (fromU: number, toU: number, fromV: number, toV: number) => boolean;

function rectangleKeeps(bounds: Bounds, rule: Ceiling['rule']): Keeps {
  const inside = (u: number, v: number) => u >= bounds.fromU && u <= bounds.toU && v >= bounds.fromV && v <= bounds.toV;
  if (rule === 'whole') return (fromU, toU, fromV, toV) => inside(fromU, fromV) && inside(toU, toV);
  if (rule === 'centre') return (fromU, toU, fromV, toV) => inside((fromU + toU) / 2, (fromV + toV) / 2);
  return (fromU, toU, fromV, toV) =>
    toU > bounds.fromU && fromU < bounds.toU && toV > bounds.fromV && fromV < bounds.toV;
}

function circleKeeps(radius: number, rule: Ceiling['rule']): Keeps {
  const farthest = (from: number, to: number) => Math.max(Math.abs(from), Math.abs(to));
  const nearest = (from: number, to: number) => Math.max(0, from, -to);
  if (rule === 'whole') {
    return (fromU, toU, fromV, toV) => circleSide(farthest(fromU, toU), farthest(fromV, toV), radius) <= 0;
  }
  if (rule === 'centre') {
    return (fromU, toU, fromV, toV) => circleSide((fromU + toU) / 2, (fromV + toV) / 2, radius) <= 0;
  }
  return (fromU, toU, fromV, toV) => circleSide(nearest(fromU, toU), nearest(fromV, toV), radius) < 0;
}

function trim(window: LatticeWindow, kept: Uint8Array): ClippedLattice {
  let count = 0;
  let fromI = window.columns;
  let toI = 0;
  let fromJ = window.rows;
  let toJ = 0;
  for (let i = 0; i < window.columns; i++) {
    for (let j = 0; j < window.rows; j++) {
      if (kept[i * window.rows + j] === 0) continue;
      count++;
      fromI = Math.min(fromI, i);
      toI = i + 1;
      fromJ = Math.min(fromJ, j);
      toJ = Math.max(toJ, j + 1);
    }
  }
  if (count === 0)
    return { firstI: window.firstI, firstJ: window.firstJ, columns: 0, rows: 0, kept: new Uint8Array(0), count };
  const columns = toI - fromI;
  const rows = toJ - fromJ;
  const own = new Uint8Array(columns * rows);
  for (let i = 0; i < columns; i++) {
    own.set(kept.subarray((fromI + i) * window.rows + fromJ, (fromI + i) * window.rows + toJ), i * rows);
  }
  return { firstI: window.firstI + fromI, firstJ: window.firstJ + fromJ, columns, rows, kept: own, count };
}
