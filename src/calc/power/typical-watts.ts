import type { Power } from '../../plan/power';
import type { PanelPower } from '../panels/panel-views';
import { panelWatts } from './panel-watts';

/** Watts of a panel at the picture level and brightness that the plan calls typical. */
export function typicalWatts(
  power: Pick<Power, 'typicalLevel' | 'brightnessShare'>,
): (panel: Pick<PanelPower, 'power'>) => number {
  return (panel) => panelWatts(panel, power.typicalLevel, power.brightnessShare);
}
