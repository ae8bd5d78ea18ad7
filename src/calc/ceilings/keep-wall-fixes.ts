import type { Ceiling } from '../../plan/ceiling';
import type { Wall } from '../../plan/wall';
import type { Wish } from '../../plan/wish';
import type { Chapter, Check, Fix } from '../chapter';
import type { PanelShape } from '../panels/panel-views';
import { setFieldsIn } from '../set-fields-in';
import { layOutWalls } from '../walls/lay-out-walls';
import type { WallsResults } from '../walls/wall-result';
import type { CeilingsResults } from './ceiling-result';
import { checkCeilings } from './check-ceilings';
import { layOutCeilings } from './lay-out-ceilings';

export interface StageShape {
  readonly walls: readonly Wall[];
  readonly ceilings: readonly Ceiling[];
  readonly shapes: readonly PanelShape[];
  readonly hall: Wish['hall'];
  readonly vehicle: Wish['vehicle'];
}

/**
 * The chapter of the walls, each fix left only where, tried on the walls, no ceiling stops that did not stop before: a
 * ring that is drawn in may close on the ceiling inside it. The very same chapter where none is taken away.
 */
export function keepWallFixes(
  chapter: Chapter<WallsResults>,
  over: Pick<Chapter<CeilingsResults>, 'checks'>,
  { walls, ceilings, shapes, hall, vehicle }: StageShape,
): Chapter<WallsResults> {
  const stopped = new Set(stopsOf(over.checks));
  const isSound = ({ command }: Fix): boolean => {
    if (command.name !== 'set-fields') return true;
    const tried = layOutWalls(setFieldsIn({ walls }, command.args.fields).walls, shapes);
    const after = checkCeilings(ceilings, shapes, tried, layOutCeilings(ceilings, shapes, tried), hall, vehicle);
    return stopsOf(after).every((id) => stopped.has(id));
  };
  const checks = chapter.checks.map((check) => {
    if (check.fix === undefined || ceilings.length === 0 || isSound(check.fix)) return check;
    const { fix: _unsound, ...plain } = check;
    return plain;
  });
  return checks.every((check, i) => check === chapter.checks[i]) ? chapter : { ...chapter, checks };
}

const stopsOf = (checks: readonly Check[]): string[] =>
  checks.flatMap(({ id, severity }) => (severity === 'stop' ? [id] : []));
