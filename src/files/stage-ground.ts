import type { SurfaceSet } from '../calc/surfaces/surface-table';
import type { PlanBox } from '../sheets/place-hall';

/** Floor that shows beyond the outermost panels. */
const beyondMm = 2000;

/** The floor under a stage: the hall's where it is stated, else that under all panels and some way beyond. */
export function stageGround({ surfaces }: SurfaceSet, hall: PlanBox | null): PlanBox {
  if (hall !== null) return hall;
  const box = { leftMm: 0, rightMm: 0, lowMm: 0, highMm: 0 };
  for (const { count, xMm, yMm } of surfaces) {
    for (let i = 0; i < count; i++) {
      box.leftMm = Math.min(box.leftMm, xMm[i]!);
      box.rightMm = Math.max(box.rightMm, xMm[i]!);
      box.lowMm = Math.min(box.lowMm, yMm[i]!);
      box.highMm = Math.max(box.highMm, yMm[i]!);
    }
  }
  return {
    leftMm: box.leftMm - beyondMm,
    rightMm: box.rightMm + beyondMm,
    lowMm: box.lowMm - beyondMm,
    highMm: box.highMm + beyondMm,
  };
}
