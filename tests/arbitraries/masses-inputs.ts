import type { MassesInputs } from '../../src/calc/masses/compute-masses';
import type { PanelMass } from '../../src/calc/panels/panel-views';
import { surfaceOf, surfaceSet } from './power-surfaces';

export const massPanel = (id: string, massKg: number): PanelMass => ({
  id,
  name: `Panel ${id}`,
  size: { widthMm: 500, heightMm: 500, depthMm: 80, bevelled: false },
  massKg,
});

/** A standing wall of 5 columns of 4 panels of 8 kg, 4 kg/m2 of fittings: 36 kg a column, frames of two columns on 0.25 m2. */
export function massesInputs(
  changes: Partial<MassesInputs> = {},
  masses: Partial<MassesInputs['masses']> = {},
): MassesInputs {
  return {
    masses: { fittingsKgPerM2: 4, columnsAFrame: 2, plateAreaM2: 0.25, floorKpa: null, ...masses },
    walls: [{ id: 'wall-1', support: 'stands' }],
    panels: [massPanel('p', 8)],
    surfaces: surfaceSet(surfaceOf({ columns: 5, rows: 4 })),
    ...changes,
  };
}
