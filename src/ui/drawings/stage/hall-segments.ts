import type { PlanBox } from '../../../sheets/place-hall';

/** Edges of the hall: its floor, and where its clear height is stated its posts and the upper edge. 6 numbers a segment, metres of the scene. */
export function hallSegments(hall: PlanBox | null, clearHeightMm: number | null): Float32Array {
  if (hall === null) return new Float32Array(0);
  const corners = [
    [hall.leftMm, hall.lowMm],
    [hall.rightMm, hall.lowMm],
    [hall.rightMm, hall.highMm],
    [hall.leftMm, hall.highMm],
  ].map(([x, y]) => [x! / 1000, -y! / 1000] as const);
  const heights = clearHeightMm === null ? [0] : [0, clearHeightMm / 1000];
  const segments: number[] = [];
  corners.forEach(([x, z], i) => {
    const [nextX, nextZ] = corners[(i + 1) % 4]!;
    for (const y of heights) segments.push(x, y, z, nextX, y, nextZ);
    if (heights.length > 1) segments.push(x, 0, z, x, heights[1]!, z);
  });
  return Float32Array.from(segments);
}
