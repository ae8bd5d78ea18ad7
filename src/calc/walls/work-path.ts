import type { Wall } from '../../plan/wall';
import type { Source, Step } from '../chapter';
import { nearestFace } from './nearest-face';
import type { WallResult } from './wall-result';

const walked: Source = {
  kind: 'practice',
  text: 'faces walked column by column from the first: each ends a column’s width on, each joint turns the heading',
};
const polygon: Source = { kind: 'source', text: 'regular polygon, any handbook of mathematics' };
const chord: Source = { kind: 'source', text: 'chord of a circle, any handbook of mathematics' };
const leastSquares: Source = {
  kind: 'source',
  text: 'circle of least squared distances to the middles of the columns, any handbook of geometry',
};
const corner: Source = {
  kind: 'source',
  text: 'chord of the corner that two backs turn about, any handbook of geometry',
};

/** How the figures of a wall's plan come about: turn, diameter, distance from the circle, opening and widest seam. */
export function workPath(wall: Wall, result: WallResult): Step[] {
  return [
    workTurn(result),
    ...workDiameter(wall, result),
    ...workWorst(result),
    ...workOpening(wall, result),
    ...workSeam(result),
  ];
}

function workTurn({ letter, jointDeg }: WallResult): Step {
  const counts = new Map<number, number>();
  for (let c = 1; c < jointDeg.length; c++) counts.set(jointDeg[c]!, (counts.get(jointDeg[c]!) ?? 0) + 1);
  const kinds = [...counts];
  const numbers = Object.fromEntries(
    kinds.flatMap(([joint, count], i) => [
      [`count${i + 1}`, count],
      [`joint${i + 1}`, joint],
    ]),
  );
  return {
    figure: `turn of ${letter}`,
    symbol: 'turn',
    expression: kinds.length === 0 ? '0' : kinds.map((_, i) => `count${i + 1} * joint${i + 1}`).join(' + '),
    numbers,
    value: kinds.reduce((sum, [joint, count]) => sum + count * joint, 0),
    unit: 'deg',
    source: walked,
  };
}

/** The joint of a wall of one even concave segment; null for any other. */
function evenJoint({ path }: Wall): number | null {
  const [segment, more] = path;
  const even = segment !== undefined && more === undefined && segment.mixed === null && segment.columns > 1;
  return even && segment.jointDeg > 0 ? segment.jointDeg : null;
}

function workDiameter(wall: Wall, { letter, columnWidthMm, bestFit, insideDiameterMm, frontMm }: WallResult): Step[] {
  if (bestFit === null || insideDiameterMm === null) return [];
  const { xMm, yMm } = bestFit.centre;
  const face = nearestFace(frontMm, xMm, yMm)!;
  const joint = evenJoint(wall);
  const byWalking: Step = {
    figure: `inside diameter of ${letter}`,
    symbol: 'D',
    expression: '2 * sqrt((faceX - centreX)^2 + (faceY - centreY)^2)',
    numbers: { faceX: face.xMm, faceY: face.yMm, centreX: xMm, centreY: yMm },
    value: insideDiameterMm,
    unit: 'mm',
    source: { kind: 'practice', text: 'twice from the centre of the best-fit circle to the nearest face' },
  };
  if (joint === null) return [byWalking];
  const numbers = { width: columnWidthMm, joint };
  const half = (joint * Math.PI) / 360;
  return [
    byWalking,
    {
      figure: `inside diameter of ${letter}, as a regular polygon`,
      symbol: 'D',
      expression: 'width / tan(joint * pi / 360)',
      numbers,
      value: columnWidthMm / Math.tan(half),
      unit: 'mm',
      source: polygon,
    },
    {
      figure: `radius over the corners of ${letter}, as a regular polygon`,
      symbol: 'R',
      expression: 'width / (2 * sin(joint * pi / 360))',
      numbers,
      value: columnWidthMm / (2 * Math.sin(half)),
      unit: 'mm',
      source: polygon,
    },
    {
      figure: `how far the middles of the columns of ${letter} stand inside its corners, as a regular polygon`,
      symbol: 'sagitta',
      expression: 'width / 2 * tan(joint * pi / 720)',
      numbers,
      value: (columnWidthMm / 2) * Math.tan(half / 2),
      unit: 'mm',
      source: polygon,
    },
  ];
}

/** The column whose face's middle is farthest from the best-fit circle. */
function workWorst({ letter, bestFit, frontMm }: WallResult): Step[] {
  if (bestFit === null) return [];
  const { centre, radiusMm, worstMm } = bestFit;
  const middles = Array.from({ length: frontMm.length / 4 }, (_, c) => ({
    middleX: (frontMm[c * 4]! + frontMm[c * 4 + 2]!) / 2,
    middleY: (frontMm[c * 4 + 1]! + frontMm[c * 4 + 3]!) / 2,
  }));
  const off = ({ middleX, middleY }: (typeof middles)[number]) =>
    Math.abs(Math.sqrt((middleX - centre.xMm) ** 2 + (middleY - centre.yMm) ** 2) - radiusMm);
  const worst = middles.find((middle) => off(middle) === worstMm);
  if (worst === undefined) return [];
  return [
    {
      figure: `greatest distance of ${letter} from its circle of best fit`,
      symbol: 'off',
      expression: 'abs(sqrt((middleX - centreX)^2 + (middleY - centreY)^2) - radius)',
      numbers: { ...worst, centreX: centre.xMm, centreY: centre.yMm, radius: radiusMm },
      value: worstMm,
      unit: 'mm',
      source: leastSquares,
    },
  ];
}

function workOpening(wall: Wall, { letter, columns, columnWidthMm, openingMm, frontMm }: WallResult): Step[] {
  if (openingMm === null) return [];
  const last = frontMm.length;
  const byWalking: Step = {
    figure: `opening of ${letter}`,
    symbol: 'opening',
    expression: 'sqrt((firstX - lastX)^2 + (firstY - lastY)^2)',
    numbers: { firstX: frontMm[0]!, firstY: frontMm[1]!, lastX: frontMm[last - 2]!, lastY: frontMm[last - 1]! },
    value: openingMm,
    unit: 'mm',
    source: walked,
  };
  const joint = evenJoint(wall);
  if (joint === null || columns * joint >= 360) return [byWalking];
  const radius = columnWidthMm / (2 * Math.sin((joint * Math.PI) / 360));
  return [
    byWalking,
    {
      figure: `opening of ${letter}, as a chord`,
      symbol: 'opening',
      expression: '2 * R * sin((360 - columns * joint) * pi / 360)',
      numbers: { R: radius, columns, joint },
      value: 2 * radius * Math.sin(((360 - columns * joint) * Math.PI) / 360),
      unit: 'mm',
      source: chord,
    },
  ];
}

function workSeam({ letter, jointDeg, seamMm, table }: WallResult): Step[] {
  let widest = 0;
  for (let c = 1; c < seamMm.length; c++) if (seamMm[c]! > seamMm[widest]!) widest = c;
  const seam = seamMm[widest] ?? 0;
  if (seam === 0) return [];
  const joint = Math.abs(jointDeg[widest]!);
  const sine = Math.sin((joint * Math.PI) / 360);
  // On a convex joint only unbevelled frames count: the depth that this seam was made with.
  const depths = table.types.map((type) => type.depthMm);
  const depth = depths.find((one) => Math.abs(2 * one * sine - seam) <= 1e-9 * seam) ?? seam / (2 * sine);
  return [
    {
      figure: `widest seam of ${letter}`,
      symbol: 'seam',
      expression: '2 * depth * sin(joint * pi / 360)',
      numbers: { depth, joint },
      value: seam,
      unit: 'mm',
      source: corner,
    },
  ];
}
