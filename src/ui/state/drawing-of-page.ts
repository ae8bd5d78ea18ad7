import type { DrawingState } from './bench-state';
import type { PageId } from './pages';

/** How a page is best drawn. Pages that are left out take the drawing as it is. */
const drawings: Readonly<Partial<Record<PageId, Pick<DrawingState, 'view' | 'tint'>>>> = {
  wish: { view: 'above', tint: 'none' },
  summary: { view: 'unrolled', tint: 'none' },
  panels: { view: 'unrolled', tint: 'none' },
  walls: { view: 'above', tint: 'none' },
  ceilings: { view: 'unrolled', tint: 'none' },
  picture: { view: 'unrolled', tint: 'none' },
  zones: { view: 'unrolled', tint: 'processor' },
  runs: { view: 'unrolled', tint: 'none' },
  faults: { view: 'unrolled', tint: 'none' },
  power: { view: 'unrolled', tint: 'circuit' },
  log: { view: 'unrolled', tint: 'none' },
};

type Surface = { readonly surfaceId: string; readonly kind: 'wall' | 'ceiling' };

/** The drawing as it is shown: as chosen by hand, or following the page in view. Surface: the one chosen, else the first that
 *  belongs to the page. */
export function drawingOfPage(drawing: DrawingState, page: PageId, surfaces: readonly Surface[]): DrawingState {
  if (!drawing.follows) return drawing;
  const wanted = page === 'ceilings' ? 'ceiling' : 'wall';
  const chosen = surfaces.find((surface) => surface.surfaceId === drawing.surfaceId);
  const fits = chosen && (page !== 'ceilings' || chosen.kind === 'ceiling');
  const surface = fits ? chosen : surfaces.find((one) => one.kind === wanted);
  return { ...drawing, ...drawings[page], surfaceId: surface?.surfaceId ?? drawing.surfaceId };
}
