import type { Ceiling } from '../../plan/ceiling';
import { pathText } from '../../plan/commands/path-text';
import type { Place } from '../chapter';
import type { CeilingResult } from './ceiling-result';

/** A ceiling with what came of it, and its place among the ceilings of the plan. */
export interface JudgedCeiling {
  readonly index: number;
  readonly ceiling: Ceiling;
  readonly result: CeilingResult;
}

/** The ceiling itself, as a place of a check. */
export const surfacePlace = ({ letter }: { readonly letter: string }): Place => ({ kind: 'surface', name: letter });

/** A field of a ceiling, by its path in the plan. */
export const ceilingField = (index: number, ...path: (string | number)[]): Place => ({
  kind: 'field',
  name: pathText(['ceilings', index, ...path]),
});
