import type { Wish } from '../../plan/wish';
import type { HeatResults } from '../heat/heat-result';
import type { MaterialsResults } from '../materials/material-result';
import type { PictureResults } from '../picture/picture-result';
import type { WallResult } from '../walls/wall-result';
import type { WishLine, WishResults } from './wish-result';

export interface WishInputs {
  readonly wish: Wish;
  /** The first wall; null without one. */
  readonly wall: WallResult | null;
  readonly picture: PictureResults;
  readonly heat: HeatResults;
  readonly materials: MaterialsResults;
}

/** Length of a flat wall or inside diameter of a ring: what the wish calls across. */
function acrossMm(wish: Wish, wall: WallResult): number | null {
  return wish.wall.form === 'ring' ? wall.insideDiameterMm : wall.columns * wall.columnWidthMm;
}

/** Every wished or stated limit beside what the plan comes to. */
export function computeWish({ wish, wall, heat, materials }: WishInputs): WishResults {
  const stands = wall !== null && wall.table.count > 0;
  const line = (name: string, field: string, asked: number | null, planned: number | null, unit: WishLine['unit']) => ({
    name,
    field,
    asked,
    planned,
    unit,
  });
  const across = wish.wall.form === 'ring' ? 'Inside diameter' : 'Length of the wall';
  return {
    lines: [
      line(across, 'wish.wall.acrossMm', wish.wall.acrossMm, stands ? acrossMm(wish, wall) : null, 'mm'),
      line('Height of the wall', 'wish.wall.heightMm', wish.wall.heightMm, stands ? wall.heightMm : null, 'mm'),
      line('Opening', 'wish.wall.openingMm', wish.wall.openingMm, wall?.openingMm ?? null, 'mm'),
      line('Cooling', 'wish.coolingW', wish.coolingW, heat.fullWhiteW, 'W'),
      line('Budget', 'wish.budget', wish.budget, materials.priceToGet, 'money'),
    ],
  };
}
