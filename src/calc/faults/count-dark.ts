import type { SurfaceSet } from '../surfaces/surface-table';

/** What of one surface is dark. */
export interface SurfaceDark {
  readonly surfaceId: string;
  readonly letter: string;
  readonly panels: number;
  /** panels / panels of the surface. */
  readonly share: number;
}

export interface DarkCount {
  readonly panels: number;
  /** panels / panels of the stage; 0 on a stage without any. */
  readonly share: number;
  /** Surfaces with a dark panel. */
  readonly surfaces: readonly SurfaceDark[];
}

/** Dark panels, by their numbers in rising order, counted by surface and in all. */
export function countDark(set: SurfaceSet, dark: ArrayLike<number>): DarkCount {
  const surfaces: SurfaceDark[] = [];
  let from = 0;
  set.surfaces.forEach(({ surfaceId, letter, count }, s) => {
    const end = set.offsets[s]! + count;
    let until = from;
    while (until < dark.length && dark[until]! < end) until++;
    const panels = until - from;
    if (panels > 0) surfaces.push({ surfaceId, letter, panels, share: panels / count });
    from = until;
  });
  return { panels: dark.length, share: set.total === 0 ? 0 : dark.length / set.total, surfaces };
}
