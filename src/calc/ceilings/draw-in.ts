import type { Ceiling } from '../../plan/ceiling';
import type { SetFieldsArguments } from '../../plan/commands/set-fields';
import type { PanelShape } from '../panels/panel-views';
import { fromMicrometres, toMicrometres } from '../surfaces/micrometres';
import { MOST_PANELS } from '../surfaces/size-limits';
import { ceilingAxes } from './ceiling-axes';
import { latticeCeiling } from './lattice-ceiling';
import { wallGap } from './wall-gap';

const MOST_TRIES = 12;

/**
 * The largest outline found, drawn in alike on all sides from the one that is, that keeps `gapMm` from a wall's faces.
 * Panels come and go whole, so it is tried in steps of an eighth of a panel at least. Null for a polygon, which is the
 * user's to draw, and where nothing is found or left.
 */
export function drawIn(
  ceiling: Ceiling,
  index: number,
  shapes: ReadonlyMap<string, PanelShape>,
  frontMm: Float64Array,
  gapMm: number,
): SetFieldsArguments['fields'] | null {
  const { outline } = ceiling;
  if (outline.kind === 'polygon') return null;
  const axes = ceilingAxes(ceiling.place);
  let offUm = 0;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const less = (mm: number) => fromMicrometres(toMicrometres(mm) - 2 * offUm);
    const drawn =
      outline.kind === 'circle'
        ? { ...outline, diameterMm: less(outline.diameterMm) }
        : { ...outline, widthMm: less(outline.widthMm), depthMm: less(outline.depthMm) };
    const sizes = Object.entries(drawn).filter((entry): entry is [string, number] => entry[0] !== 'kind');
    if (sizes.some(([, mm]) => mm <= 0)) return null;
    const laid = latticeCeiling({ ...ceiling, outline: drawn }, shapes, MOST_PANELS);
    if ('kind' in laid) return null;
    const least = wallGap(laid.clipped, laid.lattice, axes, frontMm)?.least.distance ?? 0;
    if (least >= gapMm) return sizes.map(([key, value]) => ({ path: ['ceilings', index, 'outline', key], value }));
    const eighthUm = toMicrometres(Math.min(laid.type.widthMm, laid.type.heightMm) / 8);
    offUm += Math.max(eighthUm, toMicrometres(gapMm - least), 1);
  }
  return null;
}
