import type { PanelData } from '../panels/panel-views';
import type { SurfaceSet } from '../surfaces/surface-table';

/** By panel through all surfaces, 1 where its sheet says that it passes data on without power; 0 for a panel of no sheet. */
export function passesUnpowered(set: SurfaceSet, panels: readonly Pick<PanelData, 'id' | 'data'>[]): Uint8Array {
  const passing = new Set(panels.filter(({ data }) => data.passesUnpowered).map(({ id }) => id));
  const passes = new Uint8Array(set.total);
  set.surfaces.forEach((table, s) => {
    const byType = table.types.map(({ panelId }) => (passing.has(panelId) ? 1 : 0));
    for (let local = 0; local < table.count; local++) passes[set.offsets[s]! + local] = byType[table.type[local]!]!;
  });
  return passes;
}
