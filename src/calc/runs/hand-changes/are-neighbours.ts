import type { WiringGrid } from '../wiring-grid';

/** True where two places of a zone share an edge. */
export function areNeighbours({ rows }: Pick<WiringGrid, 'rows'>, a: number, b: number): boolean {
  const across = Math.abs(Math.floor(a / rows) - Math.floor(b / rows));
  const up = Math.abs((a % rows) - (b % rows));
  return across + up === 1;
}
