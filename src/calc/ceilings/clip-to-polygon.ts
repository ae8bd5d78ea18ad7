import type { Ceiling } from '../../plan/ceiling';
import { type Edge, edgeCrossesPlace } from './edge-crosses-place';
import type { Lattice } from './lattice';
import type { LatticeWindow } from './lattice-window';
import { turnSign } from './turn-sign';

/**
 * Places of the window that the rule keeps inside a polygon (even-odd where it crosses itself); exact. `points` are u, v
 * pairs in half micrometres. An edge that only touches a place does not cross it; a centre on the edge is inside.
 */
export function clipToPolygon(
  points: readonly (readonly [u: number, v: number])[],
  rule: Ceiling['rule'],
  lattice: Lattice,
  window: LatticeWindow,
): Uint8Array {
  const edges = points.map(([aU, aV], i): Edge => {
    const [bU, bV] = points[(i + 1) % points.length]!;
    return { aU, aV, bU, bV };
  });
  const within = rule === 'centre' ? null : placesOnEdges(edges, lattice, window);
  const { inside, onEdge } = centresInside(edges, lattice, window);
  return inside.map((one, place) => {
    if (rule === 'centre') return one | onEdge[place]!;
    return rule === 'whole' ? one & (1 - within![place]!) : one | within![place]!;
  });
}

/** 1 for every place whose inside an edge passes through. Each edge looks only at places beside it, row by row. */
function placesOnEdges(edges: readonly Edge[], lattice: Lattice, window: LatticeWindow): Uint8Array {
  const { columns, rows } = window;
  const crossed = new Uint8Array(columns * rows);
  const startU = lattice.startU + window.firstI * lattice.stepU;
  const startV = lattice.startV + window.firstJ * lattice.stepV;
  for (const edge of edges) {
    const slope = edge.bV === edge.aV ? 0 : (edge.bU - edge.aU) / (edge.bV - edge.aV);
    const low = Math.min(edge.aV, edge.bV);
    const high = Math.max(edge.aV, edge.bV);
    const lastRow = Math.min(rows - 1, Math.ceil((high - startV) / lattice.stepV));
    for (let j = Math.max(0, Math.floor((low - startV) / lattice.stepV) - 1); j <= lastRow; j++) {
      const fromV = startV + j * lattice.stepV;
      const toV = fromV + lattice.stepV;
      // Where the edge enters and leaves the row, roughly; the exact test then looks at one place more on either side.
      const at = (v: number) => edge.aU + (Math.min(high, Math.max(low, v)) - edge.aV) * slope;
      const ends = slope === 0 && low === high ? [edge.aU, edge.bU] : [at(fromV), at(toV)];
      const first = Math.max(0, Math.floor((Math.min(...ends) - startU) / lattice.stepU) - 1);
      const last = Math.min(columns - 1, Math.floor((Math.max(...ends) - startU) / lattice.stepU) + 1);
      for (let i = first; i <= last; i++) {
        const fromU = startU + i * lattice.stepU;
        if (edgeCrossesPlace(edge, { fromU, toU: fromU + lattice.stepU, fromV, toV })) crossed[i * rows + j] = 1;
      }
    }
  }
  return crossed;
}

/** For every place, whether an odd number of edges lies on the left of its centre, and whether one goes through it. */
function centresInside(edges: readonly Edge[], lattice: Lattice, window: LatticeWindow) {
  const { columns, rows } = window;
  const inside = new Uint8Array(columns * rows);
  const onEdge = new Uint8Array(columns * rows);
  const firstU = lattice.startU + window.firstI * lattice.stepU + lattice.stepU / 2;
  const firstV = lattice.startV + window.firstJ * lattice.stepV + lattice.stepV / 2;
  const centreU = (i: number) => firstU + i * lattice.stepU;
  const toggles = new Uint8Array(columns + 1);
  for (let j = 0; j < rows; j++) {
    const v = firstV + j * lattice.stepV;
    toggles.fill(0);
    for (const edge of edges) {
      const low = Math.min(edge.aV, edge.bV);
      const high = Math.max(edge.aV, edge.bV);
      if (v < low || v > high) continue;
      const fromU = Math.min(edge.aU, edge.bU);
      const toU = Math.max(edge.aU, edge.bU);
      if (low === high) {
        for (let i = placeFrom(fromU, firstU, lattice.stepU); i < columns && centreU(i) <= toU; i++)
          onEdge[i * rows + j] = 1;
        continue;
      }
      const [bottom, top] = edge.aV < edge.bV ? [edge.aU, edge.bU] : [edge.bU, edge.aU];
      const side = (i: number) => turnSign(bottom, low, top, high, centreU(i), v);
      const roughU = bottom + ((v - low) / (high - low)) * (top - bottom);
      let i = Math.min(columns, placeFrom(roughU, firstU, lattice.stepU));
      while (i > 0 && side(i - 1) <= 0) i--;
      while (i < columns && side(i) > 0) i++;
      // Now i is the first centre on the edge or on its right.
      if (i < columns && side(i) === 0) onEdge[i * rows + j] = 1;
      if (v < high) toggles[i]! ^= 1;
    }
    for (let i = 0, odd = 0; i < columns; i++) {
      odd ^= toggles[i]!;
      inside[i * rows + j] = odd;
    }
  }
  return { inside, onEdge };
}

/** First place whose centre is at or after u, roughly. */
const placeFrom = (u: number, firstU: number, step: number): number => Math.max(0, Math.ceil((u - firstU) / step));
