import type { Source, Step } from '../chapter';
import type { SurfaceTable } from '../surfaces/surface-table';
import { standardGravity } from '../tables/standard-gravity';
import type { MassesInputs } from './compute-masses';
import { heaviestFrame } from './heaviest-frame';
import type { MassesResults } from './mass-result';

const sheet: Source = { kind: 'sheet', text: 'mass and size of each panel; fittings by area as planned' };

/** Panels of some columns of some surfaces, `to` being the first column beyond. */
interface Part {
  readonly table: SurfaceTable;
  readonly from: number;
  readonly to: number;
}

/** Panels by type times what each weighs, with its fittings by area: the same type of two surfaces is one term. */
function panelsAndFittings(
  parts: readonly Part[],
  { masses, panels }: MassesInputs,
): Pick<Step, 'expression' | 'numbers'> {
  const terms = new Map<string, { count: number; wide: number; high: number }>();
  for (const { table, from, to } of parts) {
    for (let i = 0; i < table.count; i++) {
      if (table.column[i]! <= from || table.column[i]! > to) continue;
      const { panelId, widthMm, heightMm } = table.types[table.type[i]!]!;
      const term = terms.get(panelId);
      if (term === undefined) terms.set(panelId, { count: 1, wide: widthMm / 1000, high: heightMm / 1000 });
      else term.count += 1;
    }
  }
  const numbers: Record<string, number> = terms.size > 0 ? { fittings: masses.fittingsKgPerM2 } : {};
  const expression = [...terms].map(([panelId, { count, wide, high }], k) => {
    const n = k + 1;
    numbers[`n${n}`] = count;
    numbers[`m${n}`] = panels.find(({ id }) => id === panelId)?.massKg ?? 0;
    numbers[`w${n}`] = wide;
    numbers[`h${n}`] = high;
    return `n${n} * (m${n} + w${n} * h${n} * fittings)`;
  });
  return { expression: expression.join(' + ') || '0', numbers };
}

/** Mass in all, and what the heaviest support frame of every standing wall bears and presses with. */
export function workMasses(inputs: MassesInputs, results: MassesResults): Step[] {
  const { masses, surfaces } = inputs;
  const total: Step = {
    figure: 'mass',
    symbol: 'm',
    ...panelsAndFittings(
      surfaces.surfaces.map((table) => ({ table, from: 0, to: table.columns })),
      inputs,
    ),
    value: results.totalKg,
    unit: 'kg',
    source: sheet,
  };
  const floors = results.surfaces.flatMap(({ surfaceId, letter, columnKg, frameKg, floorKpa }): Step[] => {
    const table = surfaces.surfaces.find((surface) => surface.surfaceId === surfaceId);
    if (table === undefined || frameKg === null || floorKpa === null) return [];
    const { fromColumn } = heaviestFrame(columnKg, masses.columnsAFrame);
    const figure = `floor pressure, ${letter}`;
    return [
      {
        figure,
        symbol: 'frame',
        ...panelsAndFittings([{ table, from: fromColumn, to: fromColumn + masses.columnsAFrame }], inputs),
        value: frameKg,
        unit: 'kg',
        source: sheet,
      },
      {
        figure,
        symbol: 'p',
        expression: 'frame * g / plate / 1000',
        numbers: { frame: frameKg, g: standardGravity.metresPerSecond2, plate: masses.plateAreaM2 },
        value: floorKpa,
        unit: 'kPa',
        source: { kind: 'source', text: `standard gravity: ${standardGravity.source}`, fromMemory: true },
      },
    ];
  });
  return [total, ...floors];
}
