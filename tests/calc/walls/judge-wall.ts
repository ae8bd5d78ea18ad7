import type { JudgedWall } from '../../../src/calc/walls/judged-wall';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { Panel } from '../../../src/plan/panel';
import type { Wall } from '../../../src/plan/wall';
import { plainPanel } from '../panels/plain-panel';

/** A wall with its result, as the checks of one wall take it. */
export function judgeWall(wall: Wall, panels: readonly Panel[] = [plainPanel('p1')], index = 0): JudgedWall {
  const result = layOutWalls([wall], panels).walls[0]!;
  return { index, wall, result, shapes: new Map(panels.map((panel) => [panel.id, panel])) };
}
