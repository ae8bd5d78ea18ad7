import type { SurfaceTable } from '../surfaces/surface-table';

/** Panels of each of the surface's types, in the order of `types`. */
export function countByType(surface: SurfaceTable): number[] {
  const counts = surface.types.map(() => 0);
  for (let i = 0; i < surface.count; i++) counts[surface.type[i]!]!++;
  return counts;
}
