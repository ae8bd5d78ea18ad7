import { zoneOfPanels } from '../../calc/zones/zone-of-panels';
import { type Chains, dataChains } from '../chains';
import { cutCosts } from '../cut-costs';
import type { EdgeSide } from '../draw-home-runs';
import { homeRunSide } from '../home-run-side';
import { paperStyle } from '../paper-style';
import type { StageParts } from '../stage-parts';
import { type From, type LatticePart, layOutUnrolled } from '../unrolled-grid';
import type { DrawnArea, SheetSpace } from './cut-to-sheets';

/** What is to be drawn of a surface, and the clear space that its texts and cables want on paper. */
export interface SurfaceArea {
  readonly area: DrawnArea;
  readonly space: SheetSpace;
}

/** Above a strip: names of columns and zones. Below: rows of tags, one at least. */
const aboveMm = 8;
const belowLeastMm = 10;
/** What a page keeps clear round the lines of a drawing. */
const airMm = 10;
/** From a row of tags to the next, and a sign of a tag. */
const tagStepMm = 3.1;
const signMm = 0.6 * paperStyle.lettersMm.small;
/** Rows of tags stand this share of the space beside the surface apart, all of them within so much of it. */
const tagShares = { step: 0.33, all: 0.66 } as const;

/** Tags beside a surface take so much of the paper at most; where that is too little some are left out. */
const tagsMostMm = { all: 60, some: 36 } as const;

/** `part` left out: all of the surface with this index. `allTags`: room for the tag of every cable, else for what fits. */
export function surfaceArea(
  parts: StageParts,
  surface: number,
  from: From,
  { part, allTags }: { readonly part?: LatticePart; readonly allTags: boolean },
): SurfaceArea {
  const table = parts.surfaces.surfaces[surface]!;
  const offset = parts.surfaces.offsets[surface]!;
  const chains = dataChains(parts);
  const all = [{ firstColumn: 1, columns: table.columns }];
  const { edgesMm, columnWidthMm } = layOutUnrolled(table, from, all, { aboveMm: 0, belowMm: 0 });
  const shown = part ?? { firstColumn: 1, columns: table.columns, firstRow: 1, rows: table.rows };
  const side = homeRunSide(table, parts.ceilingEntry, from);
  const isBeside = side === 'left' || side === 'right';
  const wantedMm = tagSpaceMm(parts, surface, chains, shown, side);
  const belowMm = isBeside || !allTags ? belowLeastMm : wantedMm;
  const tagsMm = isBeside ? Math.min(tagsMostMm[allTags ? 'all' : 'some'], wantedMm) : belowLeastMm;
  const dimensionMm = aboveMm * (side === 'right' ? 2.4 : side === 'left' ? 1.3 : 0.75);
  return {
    area: {
      part: shown,
      columnWidthMm,
      heightMm: (firstRow, rows) => {
        const lower = edgesMm[firstRow - 1]!;
        const ground = table.kind === 'wall' && firstRow === 1 ? Math.min(0, lower) : lower;
        return edgesMm[Math.min(table.rows, firstRow + rows - 1)]! - ground;
      },
      cutCost: cutCosts(table, offset, zoneOfPanels(table, parts.zones), chains.chainOf),
    },
    space: {
      aboveMm,
      belowMm,
      besideMm: 2 * airMm + (isBeside ? tagsMm : 0) + dimensionMm,
      tagsMm,
      roundMm: airMm + 2 + (side === 'top' ? belowMm : 0),
    },
  };
}

/** Room for so many tags one beyond the other as come to one column (to one row, where cables come from the side). */
function tagSpaceMm(parts: StageParts, surface: number, chains: Chains, part: LatticePart, side: EdgeSide): number {
  const table = parts.surfaces.surfaces[surface]!;
  const offset = parts.surfaces.offsets[surface]!;
  const upright = side === 'bottom' || side === 'top';
  const counts = new Map<number, number>();
  let longest = 0;
  const take = (panel: number, text: string) => {
    const local = panel - offset;
    const column = table.column[local]! - part.firstColumn;
    const row = table.row[local]! - part.firstRow;
    if (column < 0 || column >= part.columns || row < 0 || row >= part.rows) return;
    const lane = upright ? column : row;
    counts.set(lane, (counts.get(lane) ?? 0) + 1);
    longest = Math.max(longest, text.length);
  };
  for (const { surfaceId, start, count, tag, returnTag } of chains.list) {
    if (surfaceId !== table.surfaceId) continue;
    take(chains.order[start]!, tag);
    if (returnTag !== null) take(chains.order[start + count - 1]!, `to ${returnTag}`);
  }
  const most = Math.max(1, ...counts.values());
  const stepMm = upright ? tagStepMm : longest * signMm + 1;
  return most === 1
    ? belowLeastMm
    : Math.max(belowLeastMm, stepMm / Math.min(tagShares.step, tagShares.all / (most - 1)));
}
