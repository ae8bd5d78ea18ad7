import type { Step } from '../chapter';
import { standardGravity } from '../tables/standard-gravity';
import type { MassesInputs } from './compute-masses';
import type { MassesResults } from './mass-result';

/** Mass in all, and the pressure under the heaviest support frame of every standing wall. */
export function workMasses({ masses }: MassesInputs, results: MassesResults): Step[] {
  const numbers: Record<string, number> = {};
  for (const surface of results.surfaces) {
    numbers[`panels${surface.letter}`] = surface.panelsKg;
    numbers[`fittings${surface.letter}`] = surface.fittingsKg;
  }
  const total: Step = {
    figure: 'mass',
    symbol: 'm',
    expression: Object.keys(numbers).join(' + ') || '0',
    numbers,
    value: results.totalKg,
    unit: 'kg',
    source: { kind: 'sheet', text: 'mass of each panel; fittings by area as planned' },
  };
  const floors = results.surfaces.flatMap((surface): Step[] =>
    surface.frameKg === null || surface.floorKpa === null
      ? []
      : [
          {
            figure: `floor pressure, ${surface.letter}`,
            symbol: 'p',
            expression: 'frame * g / plate / 1000',
            numbers: { frame: surface.frameKg, g: standardGravity.metresPerSecond2, plate: masses.plateAreaM2 },
            value: surface.floorKpa,
            unit: 'kPa',
            source: { kind: 'source', text: `standard gravity: ${standardGravity.source}`, fromMemory: true },
          },
        ],
  );
  return [total, ...floors];
}
