import type { Ceiling } from './ceiling';
import type { Wall } from './wall';

/** Where a surface repeats the id or the letter of one before it. */
export interface TwinSurface {
  readonly path: (string | number)[];
  readonly reason: string;
}

/** The first wall or ceiling whose id or letter another surface has already; undefined where all differ. */
export function findTwinSurface(surfaces: {
  readonly walls: readonly Wall[];
  readonly ceilings: readonly Ceiling[];
}): TwinSurface | undefined {
  const seen = { id: new Set<string>(), letter: new Set<string>() };
  for (const group of ['walls', 'ceilings'] as const) {
    for (const [place, surface] of surfaces[group].entries()) {
      for (const key of ['id', 'letter'] as const) {
        if (seen[key].has(surface[key])) {
          return { path: [group, place, key], reason: `another surface has '${surface[key]}' already` };
        }
        seen[key].add(surface[key]);
      }
    }
  }
  return undefined;
}
