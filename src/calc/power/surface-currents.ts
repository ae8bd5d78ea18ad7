import type { PanelPower } from '../panels/panel-views';
import type { PowerInputs } from './compute-power';
import { legScheme } from './leg-scheme';
import { type PanelCurrent, panelCurrent } from './panel-current';

/** What each panel type of each surface draws, at full white where no other watts are asked for: one list a surface, one entry a type of its table. */
export function surfaceCurrents(
  { power, panels, surfaces }: Pick<PowerInputs, 'power' | 'panels' | 'surfaces'>,
  wattsOf?: (panel: PanelPower) => number,
): readonly (readonly PanelCurrent[])[] {
  const { lowestV } = legScheme(power);
  return surfaces.surfaces.map((surface) =>
    surface.types.map((type) => panelCurrent(type.panelId, panels, power.circuit, lowestV, wattsOf)),
  );
}
