import { pathText } from '../../plan/commands/path-text';
import type { Wall } from '../../plan/wall';
import type { Place } from '../chapter';
import type { PanelShape } from '../panels/panel-views';
import type { WallResult } from './wall-result';

/** A wall that could be laid out, with what came of it: what the checks of one wall look at. */
export interface JudgedWall {
  /** Its place among the walls of the plan. */
  readonly index: number;
  readonly wall: Wall;
  readonly result: WallResult;
  readonly shapes: ReadonlyMap<string, PanelShape>;
}

/** The wall itself, as a place of a check. */
export const surfacePlace = ({ wall }: Pick<JudgedWall, 'wall'>): Place => ({ kind: 'surface', name: wall.letter });

/** A field of the wall, by its path in the plan. */
export const wallField = ({ index }: Pick<JudgedWall, 'index'>, ...path: (string | number)[]): Place => ({
  kind: 'field',
  name: pathText(['walls', index, ...path]),
});

/** A column of the wall, from 0. */
export const columnPlace = ({ wall }: Pick<JudgedWall, 'wall'>, column: number): Place => ({
  kind: 'column',
  name: `${wall.letter} C${column + 1}`,
});
