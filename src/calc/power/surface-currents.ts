import type { PowerInputs } from './compute-power';
import { legScheme } from './leg-scheme';
import { type PanelCurrent, panelCurrent } from './panel-current';

/** What each panel type of each surface draws: one list a surface, one entry a type of its table. */
export function surfaceCurrents({
  power,
  panels,
  surfaces,
}: Pick<PowerInputs, 'power' | 'panels' | 'surfaces'>): readonly (readonly PanelCurrent[])[] {
  const { lowestV } = legScheme(power);
  return surfaces.surfaces.map((surface) =>
    surface.types.map((type) => panelCurrent(type.panelId, panels, power.circuit, lowestV)),
  );
}
