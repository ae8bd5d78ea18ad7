import { computeHeat } from '../../src/calc/heat/compute-heat';
import { computeMaterials } from '../../src/calc/materials/compute-materials';
import type { WishInputs } from '../../src/calc/wish/compute-wish';
import { defaultWish, type Wish } from '../../src/plan/wish';
import { heatInputs } from './heat-inputs';
import { materialsInputs } from './materials-inputs';

/** A stage without a wall, with the bill of `materialsInputs` and the heat of `heatInputs`. */
export function wishInputs(wish: Partial<Wish> = {}, changes: Partial<WishInputs> = {}): WishInputs {
  const stock = wish.stock ?? [];
  return {
    wish: { ...defaultWish, ...wish },
    wall: null,
    picture: { surfaces: [], pixels: 0, rateBps: 0 },
    power: { legs: [{ leg: 'L1', currentA: 82, limitA: 320 }], worstLegA: 82 },
    heat: computeHeat(heatInputs()),
    materials: computeMaterials(materialsInputs({ stock })),
    ...changes,
  };
}
