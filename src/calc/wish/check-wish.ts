import type { Check } from '../chapter';
import { checkBudget } from './check-budget';
import { checkCameras } from './check-cameras';
import { checkStock } from './check-stock';
import type { WishInputs } from './compute-wish';

/** Money and counts against what was stated; sizes are judged by the walls, cooling by heat, supply by power. */
export function checkWish({ wish, materials, picture }: WishInputs): Check[] {
  return [
    ...checkBudget(wish.budget, materials),
    ...checkStock(wish.stock, materials.lines),
    ...checkCameras(wish.camerasAtOnce, picture),
  ];
}
