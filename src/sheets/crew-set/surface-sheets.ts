import { drawUnrolled, type UnrolledDrawing, type UnrolledOptions } from '../draw-unrolled';
import type { Drawing } from '../drawing';
import type { Format } from '../format';
import { markChanges } from '../mark-changes';
import type { StageParts } from '../stage-parts';
import type { LatticePart } from '../unrolled-grid';
import type { Block, DrawingSheet, Room } from './crew-part';
import type { ChangesSince, CrewSetOptions } from './crew-set-options';
import { columnsAcross, cutToSheets } from './cut-to-sheets';
import { surfaceArea } from './surface-area';

export interface SurfaceSheetsOptions {
  /** Index of the surface in the set. */
  readonly surface: number;
  readonly from: UnrolledOptions['from'];
  readonly tint: UnrolledOptions['tint'];
  /** What is drawn of it; left out: all. */
  readonly part?: LatticePart;
  /** Room for the tag of every cable. */
  readonly allTags: boolean;
  /** Width of a panel on paper at least. */
  readonly leastPanelMm: number;
  /** `isWhole`: the part is all that was asked for. */
  readonly title: (part: LatticePart, isWhole: boolean) => string;
  /** Share of the room's height that the drawing may take where a scale with wide enough panels allows it. */
  readonly heightShare: number;
  readonly caution: string | null;
  /** What is marked as changed, and since when; null: nothing. */
  readonly since: Pick<ChangesSince, 'name' | 'panels'> | null;
  /** Under the first sheet. */
  readonly under: readonly Block[];
  readonly rooms: CrewSetOptions['rooms'];
  readonly format: Format;
}

/**
 * Sheets of a surface laid flat, or of a part of it: one where the paper has room for all of it with panels so wide, else as
 * many as it takes, named by their columns (and rows).
 */
export function surfaceSheets(parts: StageParts, options: SurfaceSheetsOptions): readonly DrawingSheet[] {
  const { surface, from, rooms, leastPanelMm } = options;
  const { surfaceId, kind, rows } = parts.surfaces.surfaces[surface]!;
  const { area, space } = surfaceArea(parts, surface, from, {
    allTags: options.allTags,
    ...(options.part === undefined ? {} : { part: options.part }),
  });
  const cut = cutToSheets(area, space, rooms, leastPanelMm);
  const lower = ({ widthMm, heightMm }: Room): Room => ({ widthMm, heightMm: heightMm * options.heightShare });
  const [first, ...others] = rooms;
  const low = cutToSheets(area, space, [lower(first), ...others.map(lower)], leastPanelMm);
  const lowEnough = low.parts.length === 1 ? low.reductions : cut.reductions.slice(-1);
  return cut.parts.map((part, index): DrawingSheet => {
    const isWhole = cut.parts.length === 1;
    return {
      kind: 'drawing',
      title: options.title(part, isWhole),
      side: sides[kind][from],
      caution: options.caution,
      reductions: lowEnough,
      draw: (reduction, paper) => {
        const across = columnsAcross(area, space, paper, reduction);
        const count = Math.ceil(part.columns / across);
        const strips = {
          besideMm: space.tagsMm * reduction,
          count,
          widest: across,
          aboveMm: space.aboveMm * reduction,
          belowMm: space.belowMm * reduction,
        };
        const isAll = options.part === undefined && isWhole && part.rows === rows;
        const drawn = drawUnrolled(
          parts,
          { surfaceId, from, tint: options.tint, strips, ...(isAll ? {} : { part }) },
          options.format,
        );
        return marked(drawn!, options.since);
      },
      under: index === 0 ? options.under : [],
    };
  });
}

/** The drawing with its changed panels marked, and a note of what the marks mean. */
function marked({ drawing, grid, offset }: UnrolledDrawing, since: SurfaceSheetsOptions['since']): Drawing {
  const marks = since === null ? null : markChanges(grid, offset, since.panels);
  if (since === null || marks === null) return drawing;
  return {
    ...drawing,
    strokes: [...drawing.strokes, marks.stroke],
    marks: [...drawing.marks, marks.triangles],
    notes: [...drawing.notes, `dashed, with a triangle: built or wired otherwise than in revision ${since.name}`],
  };
}

const sides = {
  wall: { behind: 'drawn from behind', inside: 'drawn from inside' },
  ceiling: { behind: 'drawn from above', inside: 'drawn from below' },
} as const;
