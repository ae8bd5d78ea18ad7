import type { JudgedCeiling } from '../../../src/calc/ceilings/judged-ceiling';
import { layOutCeilings } from '../../../src/calc/ceilings/lay-out-ceilings';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { Ceiling } from '../../../src/plan/ceiling';
import type { Wall } from '../../../src/plan/wall';
import { plainPanel } from '../panels/plain-panel';

export const panels = [plainPanel('p1')];
export const shapes = new Map([['p1', panels[0]!]]);

/** A ceiling with its result beside walls, as the checks of one ceiling take it. */
export function judgeCeiling(ceiling: Ceiling, walls: readonly Wall[] = []): JudgedCeiling {
  const result = layOutCeilings([ceiling], panels, layOutWalls(walls, panels)).ceilings[0]!;
  return { index: 0, ceiling, result };
}
