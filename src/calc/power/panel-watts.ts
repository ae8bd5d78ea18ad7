import type { PanelPower } from '../panels/panel-views';

/** Watts of one panel at a picture level and a brightness, both 0 to 1: black + level x brightness x (full white - black). */
export function panelWatts(panel: Pick<PanelPower, 'power'>, level: number, brightnessShare: number): number {
  const { blackW, fullWhiteW } = panel.power;
  return blackW + level * brightnessShare * (fullWhiteW - blackW);
}
