import type { Masses } from '../../plan/site';
import type { Wall } from '../../plan/wall';
import type { PanelMass } from '../panels/panel-views';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import { standardGravity } from '../tables/standard-gravity';
import type { MassesResults, SurfaceMass } from './mass-result';

export interface MassesInputs {
  readonly masses: Masses;
  readonly surfaces: SurfaceSet;
  readonly panels: readonly PanelMass[];
  readonly walls: readonly Pick<Wall, 'id' | 'support'>[];
}

/** Mass column by column, and what a standing wall's heaviest support frame puts on the floor. */
export function computeMasses(inputs: MassesInputs): MassesResults {
  const surfaces = inputs.surfaces.surfaces.map((table) => massOf(inputs, table));
  return { surfaces, totalKg: surfaces.reduce((sum, { totalKg }) => sum + totalKg, 0) };
}

function massOf({ masses, panels, walls }: MassesInputs, table: SurfaceTable): SurfaceMass {
  const massById = new Map(panels.map((panel) => [panel.id, panel.massKg]));
  const panelKg = table.types.map((type) => massById.get(type.panelId) ?? 0);
  const fittingKg = table.types.map((type) => (type.widthMm * type.heightMm * masses.fittingsKgPerM2) / 1e6);
  const columnKg = new Float64Array(table.columns);
  let panelsKg = 0;
  let fittingsKg = 0;
  for (let i = 0; i < table.count; i++) {
    const type = table.type[i]!;
    panelsKg += panelKg[type]!;
    fittingsKg += fittingKg[type]!;
    columnKg[table.column[i]! - 1]! += panelKg[type]! + fittingKg[type]!;
  }
  const stands = walls.some((wall) => wall.id === table.surfaceId && wall.support === 'stands') && table.count > 0;
  const frameKg = stands ? heaviestFrame(columnKg, masses.columnsAFrame) : null;
  return {
    surfaceId: table.surfaceId,
    letter: table.letter,
    panelsKg,
    fittingsKg,
    totalKg: panelsKg + fittingsKg,
    columnKg,
    heaviestColumnKg: columnKg.reduce((most, kg) => Math.max(most, kg), 0),
    frameKg,
    floorKpa: frameKg === null ? null : (frameKg * standardGravity.metresPerSecond2) / masses.plateAreaM2 / 1000,
  };
}

/** Heaviest of the frames that each carry so many neighbouring columns, counted from the first. */
function heaviestFrame(columnKg: Float64Array, columnsAFrame: number): number {
  let heaviest = 0;
  for (let first = 0; first < columnKg.length; first += columnsAFrame) {
    const frameKg = columnKg.subarray(first, first + columnsAFrame).reduce((sum, kg) => sum + kg, 0);
    heaviest = Math.max(heaviest, frameKg);
  }
  return heaviest;
}
