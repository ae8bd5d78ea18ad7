import type { WallResult } from '../walls/wall-result';
import type { CeilingAxes } from './ceiling-axes';
import type { ClippedLattice } from './clip-ceiling';
import type { Rectangle } from './disc-overlap';
import { HALVES_A_MM, type Lattice } from './lattice';
import { type Nearest, nearestPoints } from './nearest-points';
import { placeDistance } from './place-distance';

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
  let near = chunks[0]?.places[0];
  let least = { column: -1, distance: Number.POSITIVE_INFINITY, place: near };
  let greatest = { column: -1, distance: -1, place: near };
  for (let column = 0; near !== undefined && column * 4 < frontMm.length; column++) {
    const [a, b] = faceOf(axes, frontMm, column);
    const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
    const under = placeUnder(clipped, lattice, middle);
    // The panel nearest to the column before is a good guess: most others are then seen to be farther at a glance.
    near = under ?? nearestPlace(chunks, near, a, b, middle);
    const distance = placeDistance(a[0], a[1], b[0], b[1], near);
    if (distance < least.distance) least = { column, distance, place: near };
    if (distance > greatest.distance) greatest = { column, distance, place: near };
  }
  if (least.column < 0) return null;
  const measured = ({ column, place }: typeof least) => {
    const [a, b] = faceOf(axes, frontMm, column);
    return { ...nearestPoints(a[0], a[1], b[0], b[1], place!), column };
  };
  return { least: measured(least), greatest: measured(greatest) };
}

type Point = readonly [u: number, v: number];

function faceOf(axes: CeilingAxes, frontMm: Float64Array, column: number): readonly [Point, Point] {
  const at = column * 4;
  return [axes.fromPlan(frontMm[at]!, frontMm[at + 1]!), axes.fromPlan(frontMm[at + 2]!, frontMm[at + 3]!)];
}

function nearestPlace(chunks: readonly Chunk[], guess: Rectangle, a: Point, b: Point, middle: Point): Rectangle {
  const reach = Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2) / 2;
  let nearest = guess;
  let distance = placeDistance(a[0], a[1], b[0], b[1], guess);
  for (const chunk of chunks) {
    if (distanceTo(chunk, middle) - reach >= distance) continue;
    for (const place of chunk.places) {
      if (distanceTo(place, middle) - reach >= distance) continue;
      const found = placeDistance(a[0], a[1], b[0], b[1], place);
      if (found < distance) {
        nearest = place;
        distance = found;
      }
    }
  }
  return nearest;
}

function distanceTo({ fromU, toU, fromV, toV }: Rectangle, [u, v]: Point): number {
  const offU = Math.max(0, fromU - u, u - toU);
  const offV = Math.max(0, fromV - v, v - toV);
  return Math.sqrt(offU * offU + offV * offV);
}

/** The panel over a point; null where there is none. */
function placeUnder(
  { firstI, firstJ, columns, rows, kept }: ClippedLattice,
  lattice: Lattice,
  [u, v]: Point,
): Rectangle | null {
  const i = Math.floor((u * HALVES_A_MM - lattice.startU) / lattice.stepU) - firstI;
  const j = Math.floor((v * HALVES_A_MM - lattice.startV) / lattice.stepV) - firstJ;
  const isKept = i >= 0 && j >= 0 && i < columns && j < rows && kept[i * rows + j] === 1;
  return isKept ? placeAt(lattice, firstI + i, firstJ + j) : null;
}

function placeAt({ startU, startV, stepU, stepV }: Lattice, i: number, j: number): Rectangle {
  const fromU = (startU + i * stepU) / HALVES_A_MM;
  const fromV = (startV + j * stepV) / HALVES_A_MM;
  return { fromU, toU: fromU + stepU / HALVES_A_MM, fromV, toV: fromV + stepV / HALVES_A_MM };
}

/** Panels with a free side, in mm, in square blocks of the lattice with a box round each. */
function edgeChunks({ firstI, firstJ, columns, rows, kept }: ClippedLattice, lattice: Lattice): Chunk[] {
  const blocks = new Map<number, Rectangle[]>();
  const has = (i: number, j: number) => i >= 0 && j >= 0 && i < columns && j < rows && kept[i * rows + j] === 1;
  for (let i = 0; i < columns; i++) {
    for (let j = 0; j < rows; j++) {
      if (!has(i, j) || (has(i - 1, j) && has(i + 1, j) && has(i, j - 1) && has(i, j + 1))) continue;
      const block = Math.floor(i / BLOCK_PLACES) * rows + Math.floor(j / BLOCK_PLACES);
      const places = blocks.get(block);
      if (places === undefined) blocks.set(block, [placeAt(lattice, firstI + i, firstJ + j)]);
      else places.push(placeAt(lattice, firstI + i, firstJ + j));
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
