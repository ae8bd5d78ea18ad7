import type { WallResult } from '../../src/calc/walls/wall-result';
import type { FixtureOptions } from './evaluation-fixture';

const widthMm = 500;
const heightMm = 500;
const depthMm = 90;
const pixels = 216;

/**
 * A wall on a regular polygon about the origin, its middle at +y: flat radius w / (2 tan(joint / 2)), headings from half
 * the sum of joints downwards. A joint of 0 gives a flat wall with its middle at the origin.
 */
export function wallOf({ columns, rows, jointDeg, baseMm = 0, hole }: FixtureOptions): WallResult {
  const joint = (jointDeg * Math.PI) / 180;
  const flatRadius = jointDeg === 0 ? null : widthMm / (2 * Math.tan(joint / 2));
  const columnHeadingDeg = Float64Array.from({ length: columns }, (_, c) => ((columns - 1) / 2 - c) * jointDeg);
  const frontMm = new Float64Array(columns * 4);
  const backMm = new Float64Array(columns * 4);
  columnHeadingDeg.forEach((headingDeg, c) => {
    const heading = (headingDeg * Math.PI) / 180;
    const [outX, outY] = [-Math.sin(heading), Math.cos(heading)];
    const x = flatRadius === null ? (c - (columns - 1) / 2) * widthMm : outX * flatRadius;
    const y = flatRadius === null ? 0 : outY * flatRadius;
    for (const [k, side] of [-1, 1].entries()) {
      frontMm[c * 4 + k * 2] = x + (side * widthMm * Math.cos(heading)) / 2;
      frontMm[c * 4 + k * 2 + 1] = y + (side * widthMm * Math.sin(heading)) / 2;
      backMm[c * 4 + k * 2] = frontMm[c * 4 + k * 2]! + outX * depthMm;
      backMm[c * 4 + k * 2 + 1] = frontMm[c * 4 + k * 2 + 1]! + outY * depthMm;
    }
  });
  const places = Array.from({ length: columns * rows }, (_, i) => ({
    column: Math.floor(i / rows) + 1,
    row: (i % rows) + 1,
  }));
  const isHole = ({ column, row }: { column: number; row: number }) =>
    hole !== undefined &&
    column >= hole.column &&
    column < hole.column + hole.columns &&
    row >= hole.row &&
    row < hole.row + hole.rows;
  const present = places.filter((place) => !isHole(place));
  const at = new Int32Array(columns * rows).fill(-1);
  present.forEach(({ column, row }, local) => {
    at[(column - 1) * rows + row - 1] = local;
  });
  const of = (figure: (place: { column: number; row: number }) => number) => Float64Array.from(present, figure);
  const xs = [...backMm].filter((_, i) => i % 2 === 0);
  const ys = [...backMm].filter((_, i) => i % 2 === 1);
  const last = columns * 4 - 4;
  const turnsDeg = jointDeg * (columns - 1);
  return {
    wallId: 'wall-a',
    letter: 'A',
    name: 'Wall',
    table: {
      surfaceId: 'wall-a',
      letter: 'A',
      name: 'Wall',
      kind: 'wall',
      count: present.length,
      columns,
      rows,
      types: [
        {
          panelId: 'panel',
          name: 'Panel 500',
          turnDeg: 0,
          widthMm,
          heightMm,
          depthMm,
          pixelsWide: pixels,
          pixelsHigh: pixels,
        },
      ],
      column: Uint16Array.from(present, (place) => place.column),
      row: Uint16Array.from(present, (place) => place.row),
      type: new Uint8Array(present.length),
      xMm: of(({ column: c }) => (frontMm[c * 4 - 4]! + frontMm[c * 4 - 2]!) / 2),
      yMm: of(({ column: c }) => (frontMm[c * 4 - 3]! + frontMm[c * 4 - 1]!) / 2),
      zMm: of(({ row }) => baseMm + (row - 0.5) * heightMm),
      headingDeg: of(({ column }) => columnHeadingDeg[column - 1]!),
      canvasX: Uint32Array.from(present, ({ column }) => (column - 1) * pixels),
      canvasY: Uint32Array.from(present, ({ row }) => (rows - row) * pixels),
      canvasWidth: columns * pixels,
      canvasHeight: rows * pixels,
      at,
    },
    columns,
    rows,
    columnWidthMm: widthMm,
    baseMm,
    heightMm: rows * heightMm,
    jointDeg: Float64Array.from({ length: columns }, (_, c) => (c === 0 ? 0 : jointDeg)),
    columnHeadingDeg,
    frontMm,
    backMm,
    seamMm: new Float64Array(columns),
    bestFit: flatRadius === null ? null : { centre: { xMm: 0, yMm: 0 }, radiusMm: flatRadius, worstMm: 0 },
    insideDiameterMm: flatRadius === null ? null : 2 * flatRadius,
    openingMm: turnsDeg < 180 ? null : Math.hypot(frontMm[last + 2]! - frontMm[0]!, frontMm[last + 3]! - frontMm[1]!),
    turnsDeg,
    areaM2: (present.length * widthMm * heightMm) / 1e6,
    pixels: present.length * pixels * pixels,
    box: {
      leftMm: Math.min(...xs),
      rightMm: Math.max(...xs),
      frontMm: Math.min(...ys),
      backMm: Math.max(...ys),
    },
  };
}
