import type { Ceiling } from '../../plan/ceiling';
import type { Wish } from '../../plan/wish';
import type { Check } from '../chapter';
import { keepSoundFixes } from '../keep-sound-fixes';
import type { PanelShape } from '../panels/panel-views';
import { panelsById } from '../panels/panels-by-id';
import { setFieldsIn } from '../set-fields-in';
import type { WallsResults } from '../walls/wall-result';
import type { CeilingsResults } from './ceiling-result';
import { checkCeilingFaults } from './check-ceiling-faults';
import { checkCeilingHoles } from './check-ceiling-holes';
import { checkCeilingRoom } from './check-ceiling-room';
import { checkRingCover } from './check-ring-cover';
import { checkWallGap } from './check-wall-gap';
import { layOutCeilings } from './lay-out-ceilings';

/**
 * All checks of the ceilings. `results` are those that layOutCeilings gives for the same ceilings, panels and walls. A
 * fix is offered only where, tried on the ceilings, it clears its check and stops nothing else of theirs.
 */
export function checkCeilings(
  ceilings: readonly Ceiling[],
  shapes: readonly PanelShape[],
  walls: WallsResults,
  results: CeilingsResults,
  hall: Wish['hall'],
  vehicle: Wish['vehicle'],
): readonly Check[] {
  const byId = panelsById(shapes);
  const judge = (made: readonly Ceiling[], laid: CeilingsResults): Check[] => [
    ...checkCeilingFaults(made, byId, walls, laid),
    ...made.flatMap((ceiling, index) => {
      const judged = { index, ceiling, result: laid.ceilings[index]! };
      if (judged.result.table.count === 0) return [];
      return [
        ...checkCeilingRoom(judged, hall, vehicle),
        ...checkCeilingHoles(judged, byId),
        ...checkWallGap(judged, byId, walls.walls),
        ...checkRingCover(judged, walls.walls),
      ];
    }),
  ];
  return keepSoundFixes(judge(ceilings, results), (fix) => {
    if (fix.command.name !== 'set-fields') return [];
    const tried = setFieldsIn({ ceilings }, fix.command.args.fields).ceilings;
    return judge(tried, layOutCeilings(tried, shapes, walls));
  });
}
