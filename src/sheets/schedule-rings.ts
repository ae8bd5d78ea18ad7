import type { WallResult } from '../calc/walls/wall-result';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';

/** Walls as they are set out: columns, joints, the circle they make, and how far they stand off it. */
export function scheduleRings(walls: readonly WallResult[]): Schedule {
  return {
    id: 'rings',
    title: 'Walls to set out',
    columns: [
      words('wall', 'Wall'),
      figures('columns', 'Columns', 'count'),
      figures('rows', 'Rows', 'count'),
      words('joints', 'Joints'),
      figures('turns', 'Turns in all', 'deg'),
      figures('insideDiameter', 'Inside diameter', 'mm'),
      figures('offCircle', 'Most off the circle', 'mm'),
      figures('opening', 'Opening', 'mm'),
      figures('height', 'Height', 'mm'),
      figures('area', 'Area', 'm2'),
      figures('pixels', 'Pixels', 'px'),
    ],
    count: walls.length,
    row: (index) => {
      const wall = walls[index]!;
      return [
        wall.name === '' ? wall.letter : `${wall.letter} ${wall.name}`,
        wall.columns,
        wall.rows,
        joints(wall.jointDeg),
        wall.turnsDeg,
        wall.insideDiameterMm,
        wall.bestFit?.worstMm ?? null,
        wall.openingMm,
        wall.heightMm,
        wall.areaM2,
        wall.pixels,
      ];
    },
    panelOf: () => null,
    totals: null,
  };
}

/** How many joints of each angle, the most frequent first: '120 of 2.5°, 15 of 5°'. The first column has none before it. */
function joints(jointDeg: Float64Array): string {
  const counts = new Map<number, number>();
  for (const joint of jointDeg.subarray(1)) counts.set(joint, (counts.get(joint) ?? 0) + 1);
  const sorted = [...counts].sort(([angleA, a], [angleB, b]) => b - a || angleA - angleB);
  return sorted.length === 0 ? 'none' : sorted.map(([angle, count]) => `${count} of ${angle}°`).join(', ');
}
