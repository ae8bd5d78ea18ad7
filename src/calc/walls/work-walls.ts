import type { Wall } from '../../plan/wall';
import type { Source, Step } from '../chapter';
import type { PanelShape } from '../panels/panel-views';
import { panelsById } from '../panels/panels-by-id';
import { countByType } from '../surfaces/count-by-type';
import { placedPanelType } from '../surfaces/placed-panel-type';
import type { WallResult, WallsResults } from './wall-result';
import { workPath } from './work-path';

const sheet: Source = { kind: 'sheet', text: 'size and pixels from the panel’s sheet, after its turn' };
const given: Source = { kind: 'given', text: 'the wall’s path, bands and holes' };

/** How every headline figure of the walls comes about. `results` are those of the same walls and panels. */
export function workWalls(walls: readonly Wall[], shapes: readonly PanelShape[], results: WallsResults): Step[] {
  const byId = panelsById(shapes);
  return walls.flatMap((wall, i) => {
    const result = results.walls[i]!;
    if (result.columns === 0) return [];
    return [
      ...workCounts(wall, result),
      ...workHeight(wall, result, byId),
      ...workPanels(result),
      ...workPath(wall, result),
    ];
  });
}

function workCounts(wall: Wall, result: WallResult): Step[] {
  const { letter, table } = result;
  return [
    sum(
      `columns of ${letter}`,
      'columns',
      'segment',
      wall.path.map((segment) => segment.columns),
      result.columns,
    ),
    sum(
      `rows of ${letter}`,
      'rows',
      'band',
      wall.bands.map((band) => band.rows),
      result.rows,
    ),
    {
      figure: `panels of ${letter}`,
      symbol: 'panels',
      expression: 'columns * rows - leftOut',
      numbers: { columns: table.columns, rows: table.rows, leftOut: table.columns * table.rows - table.count },
      value: table.count,
      unit: 'count',
      source: given,
    },
  ];
}

function sum(figure: string, symbol: string, part: string, parts: readonly number[], value: number): Step {
  return {
    figure,
    symbol,
    expression: parts.map((_, i) => `${part}${i + 1}`).join(' + '),
    numbers: Object.fromEntries(parts.map((one, i) => [`${part}${i + 1}`, one])),
    value,
    unit: 'count',
    source: given,
  };
}

function workHeight(wall: Wall, result: WallResult, shapes: ReadonlyMap<string, PanelShape>): Step[] {
  const numbers: Record<string, number> = {};
  const terms = wall.bands.map((band, i) => {
    numbers[`rows${i + 1}`] = band.rows;
    numbers[`high${i + 1}`] = placedPanelType(shapes.get(band.panelId)!, band.turnDeg).heightMm;
    return `rows${i + 1} * high${i + 1}`;
  });
  return [
    {
      figure: `height of ${result.letter}`,
      symbol: 'height',
      expression: terms.join(' + '),
      numbers,
      value: result.heightMm,
      unit: 'mm',
      source: sheet,
    },
  ];
}

function workPanels({ letter, table, areaM2, pixels }: WallResult): Step[] {
  const counts = countByType(table);
  const numbers = (each: (type: (typeof table.types)[number]) => Record<string, number>) =>
    Object.fromEntries(
      table.types.flatMap((type, t) =>
        Object.entries({ panels: counts[t]!, ...each(type) }).map(([name, value]) => [`${name}${t + 1}`, value]),
      ),
    );
  const terms = (term: (n: number) => string) => table.types.map((_, t) => term(t + 1)).join(' + ');
  return [
    {
      figure: `area of ${letter}`,
      symbol: 'area',
      expression: `(${terms((n) => `panels${n} * width${n} * height${n}`)}) / 10^6`,
      numbers: numbers((type) => ({ width: type.widthMm, height: type.heightMm })),
      value: areaM2,
      unit: 'm2',
      source: sheet,
    },
    {
      figure: `pixels of ${letter}`,
      symbol: 'pixels',
      expression: terms((n) => `panels${n} * wide${n} * high${n}`),
      numbers: numbers((type) => ({ wide: type.pixelsWide, high: type.pixelsHigh })),
      value: pixels,
      unit: 'px',
      source: sheet,
    },
  ];
}
