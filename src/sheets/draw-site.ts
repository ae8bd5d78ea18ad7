import type { Dimension, Label, LabelSeries, Stroke } from './drawing';
import type { Opening } from './find-opening';
import type { Format } from './format';
import { LineBuilder } from './line-builder';
import type { PlanBox } from './place-hall';
import type { StageParts } from './stage-parts';

/** A vehicle is drawn this many times as long as wide, with an open end: the plan states its width and height only. */
const vehicleLengths = 1.6;

/** How far from the hall its dimension lines run; more where their text stands between. */
const besideMm = 700;

/** The width of the opening stands inside, so far that words wider than the opening clear the ends of the wall. */
const insideGap = 2;

export interface SiteDrawing {
  readonly strokes: readonly Stroke[];
  readonly dimensions: readonly Dimension[];
  readonly labels: LabelSeries;
}

/** The hall with its sides, the opening with its width, and the vehicle that must drive in, standing before it. */
export function drawSite(
  hall: PlanBox | null,
  opening: Opening | null,
  vehicle: StageParts['vehicle'],
  format: Format,
): SiteDrawing {
  const walls = new LineBuilder();
  const body = new LineBuilder();
  const dimensions: Dimension[] = [];
  const labels: Label[] = [];
  if (hall !== null) {
    walls.rectangle(hall.leftMm, -hall.highMm, hall.rightMm, -hall.lowMm);
    // On the sides away from the opening, where the vehicle stands.
    const level = opening !== null && opening.outY < 0 ? -hall.highMm - besideMm : -hall.lowMm + besideMm * 2;
    const beside = opening !== null && opening.outX < -0.5 ? hall.rightMm + besideMm * 1.8 : hall.leftMm - besideMm;
    dimensions.push(
      measured(hall.leftMm, level, hall.rightMm, level, `hall ${format(hall.rightMm - hall.leftMm, 'mm')}`),
      measured(beside, -hall.lowMm, beside, -hall.highMm, `hall ${format(hall.highMm - hall.lowMm, 'mm')}`),
    );
  }
  if (opening !== null) {
    const { from, to, outX, outY } = opening;
    dimensions.push({
      ...measured(from.xMm, -from.yMm, to.xMm, -to.yMm, `opening ${format(opening.widthMm, 'mm')}`),
      aside: { x: -outX, y: outY, gap: insideGap },
    });
    if (vehicle.widthMm !== null) labels.push(drawVehicle(body, opening, vehicle.widthMm, vehicle.heightMm, format));
  }
  return {
    strokes: [
      { layer: 'hall', pen: 'ink', weight: 'heavy', dash: 'solid', leastScale: 0, lines: walls.build(true) },
      { layer: 'vehicle', pen: 'soft', weight: 'medium', dash: 'solid', leastScale: 0, lines: body.build() },
    ],
    dimensions,
    labels: {
      layer: 'vehicle',
      pen: 'soft',
      size: 'small',
      leastScale: 0,
      count: labels.length,
      at: (i) => labels[i]!,
      numberOf: (i) => i,
    },
  };
}

function measured(x1Mm: number, y1Mm: number, x2Mm: number, y2Mm: number, text: string): Dimension {
  return { x1Mm, y1Mm, x2Mm, y2Mm, text };
}

/** Cab towards the stage, far end broken off. */
function drawVehicle(
  lines: LineBuilder,
  opening: Opening,
  widthMm: number,
  heightMm: number | null,
  format: Format,
): Label {
  const { middle, outX, outY } = opening;
  const at = (across: number, out: number): [number, number] => [
    middle.xMm - outY * across + outX * out,
    -(middle.yMm + outX * across + outY * out),
  ];
  const half = widthMm / 2;
  const near = 800;
  const cab = near + widthMm * 0.75;
  const far = near + widthMm * vehicleLengths;
  lines
    .moveTo(...at(-half, far))
    .lineTo(...at(-half, near))
    .lineTo(...at(half, near))
    .lineTo(...at(half, far));
  lines.segment(...at(-half, cab), ...at(half, cab));
  const notch = widthMm * 0.12;
  lines
    .moveTo(...at(-half - notch, far))
    .lineTo(...at(-notch, far))
    .lineTo(...at(-notch / 2, far - notch))
    .lineTo(...at(notch / 2, far + notch))
    .lineTo(...at(notch, far))
    .lineTo(...at(half + notch, far));
  const [xMm, yMm] = at(0, (cab + far) / 2);
  const wide = format(widthMm, 'mm');
  return {
    text: heightMm === null ? `${wide} wide` : `${wide} wide, ${format(heightMm, 'mm')} high`,
    short: wide,
    xMm,
    yMm,
    asideX: 0,
    asideY: 0,
    gap: 0,
  };
}
