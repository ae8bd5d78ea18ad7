import type { WallResult } from '../walls/wall-result';
import type { CeilingAxes } from './ceiling-axes';
import type { ClippedLattice } from './clip-ceiling';
import type { Rectangle } from './disc-overlap';
import { HALVES_A_MM, type Lattice } from './lattice';
import { type Nearest, placeDistance } from './place-distance';

/** Gaps in plan between a ceiling and the faces of one wall. Points are in the ceiling's axes, u and v in mm. */
export interface WallGap {
  /** The column, from 0, whose face is nearest to a panel, and the points between which the gap is least. */
  readonly least: Nearest & { readonly column: number };
  /** The column whose face is farthest from the panel nearest to it. */
  readonly greatest: Nearest & { readonly column: number };
}

interface Chunk extends Rectangle {
  readonly places: readonly Rectangle[];
}

/** Side of a block of places. */
const BLOCK_PLACES = 8;

/** Each column's face against the panel nearest to it. Null without panels or columns. */
export function wallGap(
  clipped: ClippedLattice,
  lattice: Lattice,
  axes: CeilingAxes,
  frontMm: WallResult['frontMm'],
): WallGap | null {
  const chunks = edgeChunks(clipped, lattice);
  let gap: WallGap | null = null;
  for (let column = 0; column * 4 < frontMm.length; column++) {
    const a = axes.fromPlan(frontMm[column * 4]!, frontMm[column * 4 + 1]!);
    const b = axes.fromPlan(frontMm[column * 4 + 2]!, frontMm[column * 4 + 3]!);
    const nearest = nearestPlace(chunks, clipped, lattice, a, b);
    if (nearest === null) return null;
    const one = { ...nearest, column };
    gap = {
      least: gap === null || one.distance < gap.least.distance ? one : gap.least,
      greatest: gap === null || one.distance > gap.greatest.distance ? one : gap.greatest,
    };
  }
  return gap;
}

type Point = readonly [u: number, v: number];

function nearestPlace(
  chunks: readonly Chunk[],
  clipped: ClippedLattice,
  lattice: Lattice,
  a: Point,
  b: Point,
): Nearest | null {
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  if (holdsPanel(clipped, lattice, middle)) return { distance: 0, onEdge: middle, onPlace: middle };
  const reach = Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2) / 2;
  let nearest: Nearest | null = null;
  for (const chunk of chunks) {
    if (nearest !== null && distanceTo(chunk, middle) - reach >= nearest.distance) continue;
    for (const place of chunk.places) {
      if (nearest !== null && distanceTo(place, middle) - reach >= nearest.distance) continue;
      const found = placeDistance(a[0], a[1], b[0], b[1], place);
      if (nearest === null || found.distance < nearest.distance) nearest = found;
    }
  }
  return nearest;
}

function distanceTo({ fromU, toU, fromV, toV }: Rectangle, [u, v]: Point): number {
  const offU = Math.max(0, fromU - u, u - toU);
  const offV = Math.max(0, fromV - v, v - toV);
  return Math.sqrt(offU * offU + offV * offV);
}

function holdsPanel({ firstI, firstJ, columns, rows, kept }: ClippedLattice, lattice: Lattice, [u, v]: Point): boolean {
  const i = Math.floor((u * HALVES_A_MM - lattice.startU) / lattice.stepU) - firstI;
  const j = Math.floor((v * HALVES_A_MM - lattice.startV) / lattice.stepV) - firstJ;
  return i >= 0 && j >= 0 && i < columns && j < rows && kept[i * rows + j] === 1;
}

/** Panels with a free side, in mm, in square blocks of the lattice with a box round each. */
function edgeChunks({ firstI, firstJ, columns, rows, kept }: ClippedLattice, lattice: Lattice): Chunk[] {
  const blocks = new Map<number, Rectangle[]>();
  const has = (i: number, j: number) => i >= 0 && j >= 0 && i < columns && j < rows && kept[i * rows + j] === 1;
  for (let i = 0; i < columns; i++) {
    for (let j = 0; j < rows; j++) {
      if (!has(i, j) || (has(i - 1, j) && has(i + 1, j) && has(i, j - 1) && has(i, j + 1))) continue;
      const fromU = (lattice.startU + (firstI + i) * lattice.stepU) / HALVES_A_MM;
      const fromV = (lattice.startV + (firstJ + j) * lattice.stepV) / HALVES_A_MM;
      const toU = fromU + lattice.stepU / HALVES_A_MM;
      const toV = fromV + lattice.stepV / HALVES_A_MM;
      const block = Math.floor(i / BLOCK_PLACES) * rows + Math.floor(j / BLOCK_PLACES);
      const places = blocks.get(block);
      if (places === undefined) blocks.set(block, [{ fromU, toU, fromV, toV }]);
      else places.push({ fromU, toU, fromV, toV });
    }
  }
  return [...blocks.values()].map((places) => ({
    places,
    fromU: Math.min(...places.map((place) => place.fromU)),
    toU: Math.max(...places.map((place) => place.toU)),
    fromV: Math.min(...places.map((place) => place.fromV)),
    toV: Math.max(...places.map((place) => place.toV)),
  }));
}
