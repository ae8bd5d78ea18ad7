import type { StageParts } from '../../../sheets/stage-parts';

/** A ball round all panels, in metres of the scene, at the height of their middle. */
export interface StageExtent {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly radius: number;
  readonly height: number;
}

export function stageExtent({ surfaces }: Pick<StageParts, 'surfaces'>): StageExtent {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const table of surfaces.surfaces) {
    for (let i = 0; i < table.count; i++) {
      const place = [table.xMm[i]! / 1000, table.zMm[i]! / 1000, -table.yMm[i]! / 1000];
      for (const axis of [0, 1, 2]) {
        low[axis] = Math.min(low[axis]!, place[axis]!);
        high[axis] = Math.max(high[axis]!, place[axis]!);
      }
    }
  }
  if (low[0] === Infinity) return { x: 0, y: 1, z: 0, radius: 5, height: 2 };
  const size = high.map((value, axis) => value - low[axis]!);
  return {
    x: (low[0]! + high[0]!) / 2,
    y: high[1]! / 2,
    z: (low[2]! + high[2]!) / 2,
    radius: Math.max(2, Math.hypot(size[0]!, high[1]!, size[2]!) / 2),
    height: Math.max(1, high[1]!),
  };
}
