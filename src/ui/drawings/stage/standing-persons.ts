import type { Opening } from '../../../sheets/find-opening';
import type { Outlook } from './camera-views';
import type { StageExtent } from './stage-extent';

/** Where persons stand for scale, x and z in metres of the scene: one before the panels, one in the opening where there is one. */
export function standingPersons(
  opening: Pick<Opening, 'middle' | 'outX' | 'outY' | 'widthMm'> | null,
  outlook: Outlook,
  extent: StageExtent,
): readonly (readonly [number, number])[] {
  const away = extent.radius * (outlook.enclosed ? -0.45 : 0.3);
  const aside = extent.radius * 0.16;
  const inside = [
    extent.x + outlook.x * away - outlook.y * aside,
    extent.z - outlook.y * away - outlook.x * aside,
  ] as const;
  if (opening === null) return [inside];
  const beside = opening.widthMm / 2000 - 0.4;
  return [
    inside,
    [
      opening.middle.xMm / 1000 + opening.outX * 0.5 - opening.outY * beside,
      -opening.middle.yMm / 1000 - opening.outY * 0.5 - opening.outX * beside,
    ],
  ];
}
