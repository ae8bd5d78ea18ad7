import { counted } from '../../units/counted';
import type { SurfaceSet } from '../surfaces/surface-table';
import type { Zone } from '../zones/zone-result';
import type { ThingList } from './thing';

/** Processors by their number, in the order of the zones: content is which panels stand in the zone, detail its canvas. */
export function processorThings(zones: readonly Zone[], surfaces: SurfaceSet, marks: readonly string[]): ThingList {
  const placeOf = new Map(surfaces.surfaces.map(({ surfaceId }, place) => [surfaceId, place]));
  const panelsOf = ({ surfaceId, firstColumn, columns, firstRow, rows }: Zone): string => {
    const place = placeOf.get(surfaceId) ?? -1;
    const table = surfaces.surfaces[place];
    const found: (string | undefined)[] = [];
    for (let column = firstColumn; column < firstColumn + columns; column++) {
      for (let row = firstRow; row < firstRow + rows; row++) {
        const local = table?.at[(column - 1) * table.rows + row - 1] ?? -1;
        if (local >= 0) found.push(marks[surfaces.offsets[place]! + local]);
      }
    }
    return found.join(' ');
  };
  const canvasOf = ({ canvasWidth, canvasHeight }: Zone) => `canvas ${canvasWidth} × ${canvasHeight} px`;
  return {
    things: zones.map((zone) => ({
      name: `${zone.processor}`,
      content: panelsOf(zone),
      detail: canvasOf(zone),
    })),
    sayContent: (index) => {
      const { letter, firstColumn, columns, firstRow, rows, panels } = zones[index]!;
      const place = `C${firstColumn} to C${firstColumn + columns - 1}, R${firstRow} to R${firstRow + rows - 1}`;
      return [`${letter} ${place}, ${counted(panels, 'panel')}`];
    },
    sayDetail: (index) => [canvasOf(zones[index]!)],
  };
}
