import type { Panel } from '../plan/panel';
import type { Plan } from '../plan/plan';
import { memoView } from './memo';
import type { PanelData, PanelMass, PanelPower, PanelPurchase, PanelShape } from './panels/panel-views';

const shapeOf = ({ id, name, size, pixels, lock }: Panel): PanelShape => ({ id, name, size, pixels, lock });
const dataOf = ({ id, name, pixels, data, light }: Panel): PanelData => ({ id, name, pixels, data, light });
const powerOf = ({ id, name, size, power }: Panel): PanelPower => ({ id, name, size, power });
const massOf = ({ id, name, size, massKg }: Panel): PanelMass => ({ id, name, size, massKg });
const purchaseOf = ({ id, name, massKg, purchase }: Panel): PanelPurchase => ({ id, name, massKg, purchase });

type Wall = Plan['walls'][number];

/** The parts of panels and walls that chapters take; a list whose parts are all as before is the list of before. */
export function planViews() {
  return {
    shapes: memoView(shapeOf),
    data: memoView(dataOf),
    power: memoView(powerOf),
    masses: memoView(massOf),
    purchases: memoView(purchaseOf),
    paths: memoView(({ id, path }: Wall) => ({ id, path })),
    supports: memoView(({ id, support }: Wall) => ({ id, support })),
  };
}
