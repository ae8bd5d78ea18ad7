import type { SurfaceSet, SurfaceTable } from '../calc/surfaces/surface-table';
import { drawElevation } from './draw-elevation';
import { drawFromAbove } from './draw-from-above';
import { drawUnrolled } from './draw-unrolled';
import type { Drawing } from './drawing';
import type { Format } from './format';
import type { StageParts } from './stage-parts';
import type { From } from './unrolled-grid';

/** A drawing that can be made of a stage for another program. */
export interface ListedDrawing {
  /** Name for its file: 'from-above', 'A-unrolled-from-behind'. */
  readonly name: string;
  /** As people read it: 'A unrolled, from behind'. */
  readonly label: string;
  /** Drawn from the parts that the list was made of, with room for letters on paper at 1 : `reduction`. */
  readonly draw: (parts: StageParts, format: Format, reduction: number) => Drawing;
}

const elevationSides = [
  ['front', 'the-open-side'],
  ['back', 'behind'],
  ['right', 'the-side'],
] as const;

/** Room above and below a surface for texts and home runs, in mm of the paper. */
const aboveMm = 8;
const belowMm = 10;

/**
 * The stage from above and level, and every surface with panels laid flat in one piece, seen from both sides; panels are tinted by
 * processor. Empty where there are no panels.
 */
export function listDrawings({ surfaces, total }: SurfaceSet): readonly ListedDrawing[] {
  if (total === 0) return [];
  return [
    {
      name: 'from-above',
      label: 'Stage from above',
      draw: (parts, format) => drawFromAbove(parts, 'processor', format),
    },
    ...elevationSides.map(
      ([side, name]): ListedDrawing => ({
        name: `elevation-from-${name}`,
        label: `Stage level, from ${name.replaceAll('-', ' ')}`,
        draw: (parts, format, reduction) => drawElevation(parts, side, reduction, format)!,
      }),
    ),
    ...surfaces
      .filter(({ count }) => count > 0)
      .flatMap((table) => (['behind', 'inside'] as const).map((from) => unrolled(table, from))),
  ];
}

function unrolled({ surfaceId, letter, kind }: SurfaceTable, from: From): ListedDrawing {
  const side = sides[kind][from];
  return {
    name: `${letter}-unrolled-from-${side}`,
    label: `${letter} unrolled, from ${side}`,
    draw: (parts, format, reduction) => {
      const strips = { count: 1, aboveMm: aboveMm * reduction, belowMm: belowMm * reduction };
      return drawUnrolled(parts, { surfaceId, from, tint: 'processor', strips }, format)!.drawing;
    },
  };
}

const sides: Readonly<Record<SurfaceTable['kind'], Readonly<Record<From, string>>>> = {
  wall: { behind: 'behind', inside: 'inside' },
  ceiling: { behind: 'above', inside: 'below' },
};
