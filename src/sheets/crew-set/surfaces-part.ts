import { cautions } from '../../calc/cautions';
import type { SurfaceTable } from '../../calc/surfaces/surface-table';
import { formatQuantity } from '../../units/format-quantity';
import { latticeSpan } from '../lattice-span';
import { paperStyle } from '../paper-style';
import type { StageParts } from '../stage-parts';
import { nameWidthPx } from '../surface-labels';
import type { From } from '../unrolled-grid';
import type { CrewPart } from './crew-part';
import type { CrewSetOptions } from './crew-set-options';
import { surfaceSheets } from './surface-sheets';

/** A panel so wide on paper shows the outline of its run and the arrow on it; the zones' sheets have its name. */
const leastPanelMm = 2.5;

/** Every wall, or every ceiling, in whole from one of its sides; null where there is none. */
export function surfacesPart(
  parts: StageParts,
  kind: SurfaceTable['kind'],
  from: From,
  { display, rooms, since }: Pick<CrewSetOptions, 'display' | 'rooms' | 'since'>,
): CrewPart | null {
  const { surfaces } = parts.surfaces;
  const side = words[kind][from];
  const sheets = surfaces.flatMap((table, surface) => {
    if (table.kind !== kind || table.count === 0) return [];
    const zoned = parts.zones.reduce((sum, zone) => sum + (zone.surfaceId === table.surfaceId ? zone.panels : 0), 0);
    return surfaceSheets(parts, {
      surface,
      from,
      tint: 'processor',
      // Panels of no zone stand on no other sheet: here they must be named.
      leastPanelMm: zoned < table.count ? nameWidthPx(table) / paperStyle.pixelsAMm : leastPanelMm,
      title: (part, isWhole) => {
        const bands = part.rows === table.rows ? '' : `, ${latticeSpan('R', part.firstRow, part.rows)}`;
        const columns = isWhole ? '' : `: ${latticeSpan('C', part.firstColumn, part.columns)}${bands}`;
        return `${`${table.letter} ${table.name}`.trim()} from ${side}${columns}`;
      },
      heightShare: 1,
      caution: kind === 'wall' ? cautions.height : cautions.hangingLoad,
      since,
      under: [],
      rooms,
      allTags: false,
      format: (value, unit) => formatQuantity(value, unit, display),
    });
  });
  const one = sheets.length === 0 ? undefined : ids[kind][from];
  return one === undefined
    ? null
    : { id: one, title: `${kind === 'wall' ? 'Walls' : 'Ceilings'} from ${side}`, sheets };
}

const words = {
  wall: { behind: 'behind', inside: 'inside' },
  ceiling: { behind: 'above', inside: 'below' },
} as const;
const ids = {
  wall: { behind: 'from-behind', inside: 'from-inside' },
  ceiling: { behind: 'ceiling-above', inside: 'ceiling-below' },
} as const;
