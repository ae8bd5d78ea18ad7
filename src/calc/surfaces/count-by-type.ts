import type { SurfaceSet, SurfaceTable } from './surface-table';

/** Panels of each of the surface's types, in the order of `types`. */
export function countByType(surface: Pick<SurfaceTable, 'types' | 'type' | 'count'>): number[] {
  const counts = surface.types.map(() => 0);
  for (let i = 0; i < surface.count; i++) counts[surface.type[i]!]!++;
  return counts;
}

/** Panels of the whole stage by panel id, in the order in which the surfaces meet them. */
export function countByPanel({ surfaces }: Pick<SurfaceSet, 'surfaces'>): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const surface of surfaces) {
    const own = countByType(surface);
    surface.types.forEach(({ panelId }, t) => {
      counts.set(panelId, (counts.get(panelId) ?? 0) + own[t]!);
    });
  }
  return counts;
}
