import type { Source, Step } from '../chapter';
import { standardGravity } from '../tables/standard-gravity';
import type { MassesInputs } from './compute-masses';
import type { MassesResults } from './mass-result';

const sum: Source = { kind: 'given', text: 'sum over the panels placed, by the catalogue and the fittings stated' };
const pressure: Source = {
  kind: 'source',
  text: 'pressure = force / area; standard gravity, CGPM 1901',
};

/** Mass of each surface and the pressure under its heaviest frame. */
export function workMasses({ masses }: MassesInputs, results: MassesResults): Step[] {
  return results.surfaces.flatMap((surface): Step[] => {
    const figure = `mass of ${surface.letter}`;
    const total: Step = {
      figure,
      symbol: 'mass',
      expression: 'panels + fittings',
      numbers: { panels: surface.panelsKg, fittings: surface.fittingsKg },
      value: surface.totalKg,
      unit: 'kg',
      source: sum,
    };
    if (surface.floorKpa === null || surface.frameKg === null) return [total];
    return [
      total,
      {
        figure: `floor pressure under ${surface.letter}`,
        symbol: 'pressure',
        expression: 'frame * gravity / plate / 1000',
        numbers: { frame: surface.frameKg, gravity: standardGravity.metresPerSecond2, plate: masses.plateAreaM2 },
        value: surface.floorKpa,
        unit: 'kPa',
        source: pressure,
      },
    ];
  });
}
