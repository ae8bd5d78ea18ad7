import type { Wall } from '../../plan/wall';
import type { Wish } from '../../plan/wish';
import type { Check } from '../chapter';
import { keepSoundFixes } from '../keep-sound-fixes';
import type { PanelShape } from '../panels/panel-views';
import { panelsById } from '../panels/panels-by-id';
import { setFieldsIn } from '../set-fields-in';
import { checkCrossing } from './check-crossing';
import { checkFaults } from './check-faults';
import { checkHall } from './check-hall';
import { checkHeightLimit } from './check-height-limit';
import { checkHoles } from './check-holes';
import { checkJoints } from './check-joints';
import { checkMixedJoints } from './check-mixed-joints';
import { checkPitches } from './check-pitches';
import { checkWayIn } from './check-way-in';
import { checkWishedWall } from './check-wished-wall';
import type { JudgedWall } from './judged-wall';
import { layOutWalls } from './lay-out-walls';
import type { WallsResults } from './wall-result';

/**
 * All checks of the walls. `results` are those that layOutWalls gives for the same walls and panels. A fix is offered
 * only where, tried on the walls, it clears its check and stops nothing else of the walls.
 */
export function checkWalls(
  walls: readonly Wall[],
  shapes: readonly PanelShape[],
  results: WallsResults,
  hall: Wish['hall'],
  vehicle: Wish['vehicle'],
  wished: Wish['wall'],
): readonly Check[] {
  const byId = panelsById(shapes);
  const judge = (made: readonly Wall[], laid: WallsResults) => judgeWalls(made, byId, laid, hall, vehicle, wished);
  return keepSoundFixes(judge(walls, results), (fix) => {
    if (fix.command.name !== 'set-fields') return [];
    const tried = setFieldsIn({ walls }, fix.command.args.fields).walls;
    return judge(tried, layOutWalls(tried, shapes));
  });
}

function judgeWalls(
  walls: readonly Wall[],
  shapes: ReadonlyMap<string, PanelShape>,
  results: WallsResults,
  hall: Wish['hall'],
  vehicle: Wish['vehicle'],
  wished: Wish['wall'],
): Check[] {
  const laid = walls.flatMap((wall, index): JudgedWall[] => {
    const result = results.walls[index]!;
    return result.columns > 0 ? [{ index, wall, result, shapes }] : [];
  });
  return [
    ...checkFaults(walls, shapes),
    ...laid.flatMap((judged) => [
      ...checkJoints(judged),
      ...checkMixedJoints(judged),
      ...checkCrossing(judged),
      ...checkHeightLimit(judged),
      ...checkHoles(judged),
      ...checkPitches(judged),
      ...checkWayIn(judged, vehicle),
    ]),
    ...checkHall(laid, hall),
    ...laid.filter(({ index }) => index === 0).flatMap((judged) => checkWishedWall(judged, wished)),
  ];
}
