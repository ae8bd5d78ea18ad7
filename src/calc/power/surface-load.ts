import type { Power } from '../../plan/power';
import type { PanelPower } from '../panels/panel-views';
import { countByType } from '../surfaces/count-by-type';
import type { SurfaceTable } from '../surfaces/surface-table';
import { panelWatts } from './panel-watts';
import type { PowerLoad } from './power-result';
import { typicalWatts } from './typical-watts';

/** Watts of one surface at black, typical (level and brightness as planned) and full white at full brightness; a panel that the
 *  catalogue does not have counts nothing. */
export function surfaceLoad(
  table: SurfaceTable,
  panels: readonly PanelPower[],
  power: Pick<Power, 'typicalLevel' | 'brightnessShare'>,
): PowerLoad {
  const counts = countByType(table);
  const sum = (watts: (panel: PanelPower) => number) =>
    table.types.reduce((total, type, t) => {
      const panel = panels.find((p) => p.id === type.panelId);
      return total + (panel === undefined ? 0 : counts[t]! * watts(panel));
    }, 0);
  return {
    surfaceId: table.surfaceId,
    blackW: sum((panel) => panelWatts(panel, 0, 1)),
    typicalW: sum(typicalWatts(power)),
    fullWhiteW: sum((panel) => panelWatts(panel, 1, 1)),
  };
}
