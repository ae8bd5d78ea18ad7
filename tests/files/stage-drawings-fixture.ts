import { drawFromAbove } from '../../src/sheets/draw-from-above';
import { drawUnrolled } from '../../src/sheets/draw-unrolled';
import type { Drawing } from '../../src/sheets/drawing';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const format = (mm: number) => `${Math.round(mm)} mm`;
const strips = { count: 1, aboveMm: 400, belowMm: 500 };

/** A stage of 40 columns under a round ceiling, from above and each surface laid flat, seen from both sides. */
export function drawingsOfStage(): readonly (readonly [string, Drawing])[] {
  const parts = stageFixture({
    columns: 40,
    rows: 6,
    jointDeg: 6,
    zoneColumns: 10,
    baseMm: 200,
    ceilingDiameterMm: 3000,
  });
  const unrolled = (surfaceId: string, from: 'behind' | 'inside') =>
    drawUnrolled(parts, { surfaceId, from, tint: 'processor', strips }, format)!.drawing;
  return [
    ['from above', drawFromAbove(parts, 'processor', format)],
    ['as wall from behind', unrolled('wall-a', 'behind')],
    ['as wall from inside', unrolled('wall-a', 'inside')],
    ['as ceiling from behind', unrolled('ceiling-b', 'behind')],
    ['as ceiling from inside', unrolled('ceiling-b', 'inside')],
  ];
}
