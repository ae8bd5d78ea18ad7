import type { Check } from '../chapter';
import type { SurfaceSet } from './surface-table';

/** A stop where panels stand on a surface that the catalogue does not have: a chapter cannot count what it knows nothing of. */
export function checkKnownPanels(
  { panels, surfaces }: { readonly panels: readonly { readonly id: string }[]; readonly surfaces: SurfaceSet },
  about: Pick<Check, 'id' | 'chapter' | 'unit' | 'sentence'>,
): Check[] {
  const known = new Set(panels.map(({ id }) => id));
  const missing = surfaces.surfaces.filter(({ types }) => types.some(({ panelId }) => !known.has(panelId)));
  if (missing.length === 0) return [];
  return [
    {
      ...about,
      severity: 'stop',
      measured: null,
      limit: null,
      where: missing.map(({ letter }) => ({ kind: 'surface', name: letter })),
    },
  ];
}
