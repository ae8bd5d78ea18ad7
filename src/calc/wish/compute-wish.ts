import type { Wish } from '../../plan/wish';
import type { HeatResults } from '../heat/heat-result';
import type { MaterialsResults } from '../materials/material-result';
import type { PictureResults } from '../picture/picture-result';
import type { PowerResults } from '../power/power-result';
import { wallAcrossMm } from '../walls/wall-across';
import type { WallResult } from '../walls/wall-result';
import type { WishLine, WishResults } from './wish-result';

export interface WishInputs {
  readonly wish: Wish;
  /** The first wall; null without one. */
  readonly wall: WallResult | null;
  readonly picture: PictureResults;
  /** Legs of the service, each with what the service points carry. */
  readonly power: Pick<PowerResults, 'legs' | 'worstLegA'>;
  readonly heat: HeatResults;
  readonly materials: MaterialsResults;
}

/** Needed counts beside what is owned and can be had, where somebody stated either. */
function stockLines(wish: Wish, materials: MaterialsResults): WishLine[] {
  return wish.stock.flatMap(({ itemId, owned, obtainable }, i) => {
    const line = materials.lines.find((one) => one.itemId === itemId);
    if (line === undefined || (owned === null && obtainable === null)) return [];
    const asked = (owned ?? 0) + (obtainable ?? 0);
    return [{ name: line.name, field: `wish.stock[${i}]`, asked, planned: line.needed, unit: 'count' }];
  });
}

/** Every wished or stated limit beside what the plan comes to. */
export function computeWish({ wish, wall, power, heat, materials }: WishInputs): WishResults {
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
      line(across, 'wish.wall.acrossMm', wish.wall.acrossMm, stands ? wallAcrossMm(wish.wall.form, wall) : null, 'mm'),
      line('Height of the wall', 'wish.wall.heightMm', wish.wall.heightMm, stands ? wall.heightMm : null, 'mm'),
      ...(wish.wall.form === 'ring'
        ? [line('Opening', 'wish.wall.openingMm', wish.wall.openingMm, wall?.openingMm ?? null, 'mm')]
        : []),
      line('Supply, the fullest leg', 'power.servicePoints', power.legs[0]?.limitA ?? null, power.worstLegA, 'A'),
      line('Cooling', 'wish.coolingW', wish.coolingW, heat.fullWhiteW, 'W'),
      line('Budget', 'wish.budget', wish.budget, materials.priceToGet, 'money'),
      ...stockLines(wish, materials),
    ],
  };
}
