import type { Outline } from '../../plan/ceiling';
import type { PointMm } from '../walls/wall-result';
import type { CeilingAxes } from './ceiling-axes';

const CIRCLE_POINTS = 72;

/** A ceiling's outline in plan, closed without repeating its first point; a circle as 72 points on it. */
export function outlineInPlan(outline: Outline, axes: CeilingAxes): readonly PointMm[] {
  return ownPoints(outline).map(([x, y]) => axes.toPlan(-x, y));
}

function ownPoints(outline: Outline): readonly (readonly [x: number, y: number])[] {
  if (outline.kind === 'polygon') return outline.points.map(({ xMm, yMm }) => [xMm, yMm]);
  if (outline.kind === 'rectangle') {
    const x = outline.widthMm / 2;
    const y = outline.depthMm / 2;
    return [
      [-x, -y],
      [x, -y],
      [x, y],
      [-x, y],
    ];
  }
  const radius = outline.diameterMm / 2;
  return Array.from({ length: CIRCLE_POINTS }, (_, i) => {
    const angle = (2 * Math.PI * i) / CIRCLE_POINTS;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}
