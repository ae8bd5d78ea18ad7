import type { PanelPower } from '../panels/panel-views';
import type { SurfaceSet } from '../surfaces/surface-table';

/** Panels of the catalogue that stand on some surface, in the catalogue's order. */
export function usedPanels(inputs: {
  readonly panels: readonly PanelPower[];
  readonly surfaces: SurfaceSet;
}): readonly PanelPower[] {
  const ids = new Set(inputs.surfaces.surfaces.flatMap((surface) => surface.types.map((type) => type.panelId)));
  return inputs.panels.filter((panel) => ids.has(panel.id));
}
