import type { Quantity } from '../chapter';
import { panelAt } from '../surfaces/panel-at';
import type { PlacedPanelType, SurfaceSet } from '../surfaces/surface-table';
import type { Said } from './change';
import type { Thing, ThingList } from './thing';

/** Lengths are alike to the micrometre and angles to a millionth of a degree. */
const whole = (figure: number, parts: number) => Math.round(figure * parts);

/** Panels in the order of their numbers: content is where one stands, detail what it is. `anchors` by panel, where they are known. */
export function panelThings(surfaces: SurfaceSet, anchors?: readonly (string | null)[]): ThingList {
  const things: Thing[] = [];
  surfaces.surfaces.forEach((table, place) => {
    const details = table.types.map((type) =>
      [type.name, type.widthMm, type.heightMm, type.pixelsWide, type.pixelsHigh, type.turnDeg].join(' '),
    );
    for (let local = 0; local < table.count; local++) {
      const mm = [table.xMm[local]!, table.yMm[local]!, table.zMm[local]!].map((length) => whole(length, 1000));
      const content = `${mm.join(' ')} ${whole(table.headingDeg[local]!, 1e6)}`;
      const name = panelAt(surfaces, surfaces.offsets[place]! + local)!.name;
      const anchor = anchors?.[surfaces.offsets[place]! + local] ?? null;
      things.push({ name, content, detail: details[table.type[local]!]!, anchor });
    }
  });
  return {
    things,
    sayContent: (index) => sayPlace(surfaces, index),
    sayDetail: (index) => sayType(panelAt(surfaces, index)!.type),
  };
}

const mm = (value: number): Quantity => ({ value, unit: 'mm' });
const deg = (value: number): Quantity => ({ value, unit: 'deg' });

function sayPlace(surfaces: SurfaceSet, index: number): Said {
  const { surface } = panelAt(surfaces, index)!;
  const local = index - surfaces.offsets[surfaces.surfaces.indexOf(surface)]!;
  const [x, y, z] = [surface.xMm[local]!, surface.yMm[local]!, surface.zMm[local]!];
  return ['x ', mm(x), ', y ', mm(y), ', ', mm(z), ' up, heading ', deg(surface.headingDeg[local]!)];
}

function sayType({ name, widthMm, heightMm, pixelsWide, pixelsHigh, turnDeg }: PlacedPanelType): Said {
  const turned = turnDeg === 0 ? [] : [', turned ', deg(turnDeg)];
  return [`${name}, `, mm(widthMm), ' × ', mm(heightMm), `, ${pixelsWide} × ${pixelsHigh} px`, ...turned];
}
