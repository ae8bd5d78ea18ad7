import type { WallResult } from '../calc/walls/wall-result';
import { drawCeilingsFromAbove } from './ceilings-from-above';
import { drawSite } from './draw-site';
import type { Box, Dimension, Drawing, Stroke } from './drawing';
import { findOpening } from './find-opening';
import type { Format } from './format';
import { LineBuilder } from './line-builder';
import { boxRoundWalls, placeHall } from './place-hall';
import type { StageParts } from './stage-parts';
import type { Tint } from './tint-panels';
import { drawWallsFromAbove } from './walls-from-above';

/** The stage in plan, seen from above with plan y up. Only processors can be told apart by tint here. */
export function drawFromAbove(parts: StageParts, tint: Tint, format: Format): Drawing {
  const hall = placeHall(parts.hall, parts.walls);
  const opening = findOpening(parts.walls);
  const walls = drawWallsFromAbove(parts.walls, parts.zones, tint === 'processor', parts.hall.walkwayMm);
  const ceilings = drawCeilingsFromAbove(parts.ceilings, format);
  const site = drawSite(hall, opening, parts.vehicle, format);
  const inside = insideCircles(parts.walls, format);
  const strokes = [...site.strokes, ...ceilings.strokes, ...walls.strokes, inside.stroke];
  const isRound = parts.walls.some(({ insideDiameterMm }) => insideDiameterMm !== null);
  const overall = hall === null || !isRound ? overallDimensions(parts, format) : [];
  return {
    title: `The stage from above${hall === null ? '' : ' in its hall'}`,
    box: boxOf(strokes, [...site.dimensions, ...overall]),
    fills: walls.fills,
    strokes,
    marks: [],
    dimensions: [...site.dimensions, ...inside.dimensions, ...overall],
    labels: [ceilings.labels, site.labels, ...walls.labels],
    notes: [
      'seen from above: up is plan +y',
      ...(parts.ceilings.length > 0 ? ['dashed: hangs overhead'] : []),
      ...(parts.walls.length > 0 && parts.hall.walkwayMm > 0
        ? [`fine dashes behind a wall: walkway of ${format(parts.hall.walkwayMm, 'mm')}`]
        : []),
    ],
    legend: [],
  };
}

/** The largest circle that touches no panel, its centre, and its diameter on a line through it. */
function insideCircles(
  walls: readonly WallResult[],
  format: Format,
): { readonly stroke: Stroke; readonly dimensions: readonly Dimension[] } {
  const lines = new LineBuilder();
  const dimensions: Dimension[] = [];
  for (const { bestFit, insideDiameterMm } of walls) {
    if (bestFit === null || insideDiameterMm === null) continue;
    const { xMm, yMm } = bestFit.centre;
    const radius = insideDiameterMm / 2;
    for (let i = 0; i <= 144; i++) {
      const angle = (i * Math.PI) / 72;
      const x = xMm + radius * Math.cos(angle);
      const y = -yMm + radius * Math.sin(angle);
      if (i === 0) lines.moveTo(x, y);
      else lines.lineTo(x, y);
    }
    lines.segment(xMm - 400, -yMm, xMm + 400, -yMm).segment(xMm, -yMm - 400, xMm, -yMm + 400);
    dimensions.push({
      x1Mm: xMm - radius,
      y1Mm: -yMm,
      x2Mm: xMm + radius,
      y2Mm: -yMm,
      text: `Ø ${format(insideDiameterMm, 'mm')} inside`,
    });
  }
  return {
    stroke: { layer: 'dimensions', pen: 'soft', weight: 'hair', dash: 'chain', leastScale: 0, lines: lines.build() },
    dimensions,
  };
}

/** A side shorter than this is no more than the depth of a wall, and not worth a dimension. */
const leastSideMm = 1000;

/** Where no hall is stated, or no wall has a diameter: the sides of the rectangle round the walls. */
function overallDimensions(parts: StageParts, format: Format): readonly Dimension[] {
  const box = boxRoundWalls(parts.walls, 0);
  if (box === null) return [];
  const y1Mm = -box.lowMm + 1800;
  const x1Mm = box.leftMm - 1800;
  const across = box.rightMm - box.leftMm;
  const along = box.highMm - box.lowMm;
  return [
    ...(across < leastSideMm
      ? []
      : [{ x1Mm: box.leftMm, y1Mm, x2Mm: box.rightMm, y2Mm: y1Mm, text: format(across, 'mm') }]),
    ...(along < leastSideMm
      ? []
      : [{ x1Mm, y1Mm: -box.lowMm, x2Mm: x1Mm, y2Mm: -box.highMm, text: format(along, 'mm') }]),
  ];
}

function boxOf(strokes: readonly Stroke[], dimensions: readonly Dimension[]): Box {
  let [leftMm, topMm, rightMm, bottomMm] = [
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  const take = (x: number, y: number) => {
    leftMm = Math.min(leftMm, x);
    rightMm = Math.max(rightMm, x);
    topMm = Math.min(topMm, y);
    bottomMm = Math.max(bottomMm, y);
  };
  for (const { lines } of strokes) {
    for (let i = 0; i < lines.xyMm.length; i += 2) take(lines.xyMm[i]!, lines.xyMm[i + 1]!);
  }
  for (const { x1Mm, y1Mm, x2Mm, y2Mm } of dimensions) {
    take(x1Mm, y1Mm);
    take(x2Mm, y2Mm);
  }
  return leftMm > rightMm
    ? { leftMm: 0, topMm: 0, rightMm: 1000, bottomMm: 1000 }
    : { leftMm, topMm, rightMm, bottomMm };
}
