import type { Masses } from '../../plan/site';
import type { Wall } from '../../plan/wall';
import type { PanelMass } from '../panels/panel-views';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import { standardGravity } from '../tables/standard-gravity';
import { heaviestFrame } from './heaviest-frame';
import type { MassesResults, SurfaceMass } from './mass-result';

export interface MassesInputs {
  readonly masses: Masses;
  readonly walls: readonly Pick<Wall, 'id' | 'support'>[];
  readonly panels: readonly PanelMass[];
  readonly surfaces: SurfaceSet;
}

/** Pressure in kPa under a plate of `areaM2` that carries `massKg` evenly. */
export function platePressureKpa(massKg: number, areaM2: number): number {
  return (massKg * standardGravity.metresPerSecond2) / areaM2 / 1000;
}

function surfaceMass(table: SurfaceTable, { masses, walls, panels }: MassesInputs): SurfaceMass {
  const typeKg = table.types.map(({ panelId }) => panels.find(({ id }) => id === panelId)?.massKg ?? 0);
  const typeFittingsKg = table.types.map(
    ({ widthMm, heightMm }) => (widthMm / 1000) * (heightMm / 1000) * masses.fittingsKgPerM2,
  );
  const columnKg = new Float64Array(table.columns);
  let panelsKg = 0;
  let fittingsKg = 0;
  for (let i = 0; i < table.count; i++) {
    const panel = typeKg[table.type[i]!]!;
    const fittings = typeFittingsKg[table.type[i]!]!;
    const column = table.column[i]! - 1;
    panelsKg += panel;
    fittingsKg += fittings;
    columnKg[column] = columnKg[column]! + panel + fittings;
  }
  const stands = walls.find(({ id }) => id === table.surfaceId)?.support === 'stands';
  const frameKg = stands ? heaviestFrame(columnKg, masses.columnsAFrame).massKg : null;
  return {
    surfaceId: table.surfaceId,
    letter: table.letter,
    panelsKg,
    fittingsKg,
    totalKg: panelsKg + fittingsKg,
    columnKg,
    heaviestColumnKg: columnKg.reduce((a, b) => Math.max(a, b), 0),
    frameKg,
    floorKpa: frameKg === null ? null : platePressureKpa(frameKg, masses.plateAreaM2),
  };
}

/**
 * Mass of every column and surface with its fittings, and for standing walls what the heaviest support frame bears. A panel that
 * the catalogue does not have weighs nothing here; the check says so. No figure here speaks of stability.
 */
export function computeMasses(inputs: MassesInputs): MassesResults {
  const surfaces = inputs.surfaces.surfaces.map((table) => surfaceMass(table, inputs));
  return { surfaces, totalKg: surfaces.reduce((sum, surface) => sum + surface.totalKg, 0) };
}
