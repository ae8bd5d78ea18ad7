import { cautions } from '../../calc/cautions';
import { formatQuantity } from '../../units/format-quantity';
import { drawElevation } from '../draw-elevation';
import { drawFromAbove } from '../draw-from-above';
import type { Format } from '../format';
import type { StageParts } from '../stage-parts';
import type { CrewPart, DrawingSheet } from './crew-part';
import type { CrewSetOptions } from './crew-set-options';
import { standardReductions } from './standard-reductions';

const sides = [
  ['front', 'Stage level, from its open side', 'drawn from the open side'],
  ['back', 'Stage level, from behind', 'drawn from behind'],
  ['right', 'Stage level, from the side', 'drawn from the side'],
] as const;

/** The stage in its hall from above, with its dimensions, its opening and the walkway; null where nothing stands or hangs. */
export function fromAbovePart(parts: StageParts, { display }: Pick<CrewSetOptions, 'display'>): CrewPart | null {
  if (parts.surfaces.total === 0) return null;
  const draw: DrawingSheet['draw'] = () => drawFromAbove(parts, 'processor', formatOf(display));
  const sheet = sheetOf('Stage from above', 'drawn from above', floorCaution(parts), draw);
  return { id: 'from-above', title: sheet.title, sheets: [sheet] };
}

/** A ring under a ceiling changes exits; else what stands wants a word, or what hangs. */
function floorCaution({ walls, ceilings }: StageParts): string {
  const isRoofed = ceilings.some(({ table }) => table.count > 0);
  if (isRoofed && walls.some(({ openingMm }) => openingMm !== null)) return cautions.exits;
  return walls.some(({ table }) => table.count > 0) ? cautions.stackedLoad : cautions.hangingLoad;
}

/** The stage level from three sides, with its heights; null where nothing stands or hangs. */
export function elevationPart(parts: StageParts, { display }: Pick<CrewSetOptions, 'display'>): CrewPart | null {
  if (parts.surfaces.total === 0) return null;
  const caution = parts.surfaces.surfaces.some(({ kind, count }) => kind === 'ceiling' && count > 0)
    ? cautions.movingParts
    : cautions.height;
  return {
    id: 'elevation',
    title: 'Heights',
    sheets: sides.map(([side, title, drawn]) =>
      sheetOf(title, drawn, caution, (reduction) => drawElevation(parts, side, reduction, formatOf(display))!),
    ),
  };
}

function formatOf(display: CrewSetOptions['display']): Format {
  return (value, unit) => formatQuantity(value, unit, display);
}

function sheetOf(title: string, side: string, caution: string, draw: DrawingSheet['draw']): DrawingSheet {
  return { kind: 'drawing', title, side, caution, draw, reductions: standardReductions, under: [] };
}
