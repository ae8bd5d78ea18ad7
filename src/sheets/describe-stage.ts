import { counted } from '../units/counted';
import type { Format } from './format';
import type { StageParts } from './stage-parts';

/** What stands on the stage, in a sentence for each surface: what a picture of it shows to whoever cannot see it. */
export function describeStage({ walls, ceilings }: Pick<StageParts, 'walls' | 'ceilings'>, format: Format): string {
  const name = (surface: { readonly letter: string; readonly name: string }) =>
    `${surface.letter} ${surface.name}`.trim();
  const ofWalls = walls.map((wall) => {
    const inside = wall.insideDiameterMm === null ? [] : [`${format(wall.insideDiameterMm, 'mm')} across inside`];
    const opening = wall.openingMm === null ? [] : [`open by ${format(wall.openingMm, 'mm')}`];
    const high = `${format(wall.heightMm, 'mm')} high`;
    return `${[`${name(wall)}: ${counted(wall.columns, 'column')} of ${counted(wall.rows, 'row')}`, high, ...inside, ...opening].join(', ')}.`;
  });
  const ofCeilings = ceilings.map(({ table, ...ceiling }) => {
    const trim = table.count === 0 ? '' : `, trim ${format(table.zMm[0]!, 'mm')}`;
    return `${name(ceiling)}: ${counted(table.count, 'panel')} overhead${trim}.`;
  });
  return [...ofWalls, ...ofCeilings].join(' ') || 'Nothing stands on the stage yet.';
}
