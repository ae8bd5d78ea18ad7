import type { Box, Dimension, Drawing, Label, LabelSeries, Stroke } from './drawing';
import { drawingExtent } from './drawing-extent';
import { bandsOf } from './elevation-bands';
import { ceilingsInElevation } from './elevation-ceilings';
import { acrossMm, type ElevationSide, elevationView } from './elevation-view';
import { drawElevationWalls } from './elevation-walls';
import { findOpening } from './find-opening';
import type { Format } from './format';
import { LineBuilder } from './line-builder';
import { paperStyle } from './paper-style';
import { personMm, personOutline } from './person-outline';
import { spreadLevels } from './spread-levels';
import type { StageParts } from './stage-parts';

/** Distances on paper, in mm: from the stage to the first dimension and from one to the next, from a level's text to the next. */
const besideMm = 9;
const stepMm = 8;
const levelGapMm = 4.2;

/** A height with its name. */
interface Level {
  readonly text: string;
  readonly heightMm: number;
  /** Where its line begins on the left. */
  readonly fromMm: number;
}

/**
 * The stage seen level, at true heights: walls with foot, bands and top, ceilings at trim with their travel, what an adult
 * reaches, the hall's clear height, the opening, and a person for scale. With room for letters on paper at 1 : `reduction`;
 * null where nothing stands or hangs.
 */
export function drawElevation(
  parts: StageParts,
  side: ElevationSide,
  reduction: number,
  format: Format,
): Drawing | null {
  const view = elevationView(parts.walls, side);
  const walls = drawElevationWalls(parts.walls, view);
  const ceilings = ceilingsInElevation(parts.ceilings, parts.plannedCeilings, view);
  const stage = drawingExtent({
    box: noBox,
    fills: [],
    strokes: [...walls, ...ceilings.strokes],
    marks: [],
    dimensions: [],
  });
  if (stage === noBox) return null;

  const vehicle = side === 'front' ? vehicleIn(parts, format) : null;
  const levels = levelsOf(parts, ceilings.levels, stage, format);
  const floorFromMm = stage.leftMm - personRoomMm;
  const leaders = drawLevels(levels, floorFromMm, reduction);
  const clear = new LineBuilder();
  const { clearHeightMm } = parts.hall;
  if (clearHeightMm !== null) clear.segment(floorFromMm, -clearHeightMm, stage.rightMm, -clearHeightMm);
  const reach = new LineBuilder();
  if (walls.some(({ lines }) => lines.ends.length > 0))
    reach.segment(floorFromMm, -parts.reachMm, stage.rightMm, -parts.reachMm);
  const floor = new LineBuilder().segment(floorFromMm, 0, stage.rightMm + besideMm * reduction, 0);
  const person = drawPerson(floorFromMm + personRoomMm / 2);
  const strokes: readonly Stroke[] = [
    ...walls,
    ...ceilings.strokes,
    { layer: 'hall', pen: 'ink', weight: 'heavy', dash: 'solid', leastScale: 0, lines: floor.build() },
    { layer: 'limits', pen: 'limit', weight: 'medium', dash: 'dashed', leastScale: 0, lines: reach.build() },
    { layer: 'hall', pen: 'limit', weight: 'medium', dash: 'chain', leastScale: 0, lines: clear.build() },
    { layer: 'vehicle', pen: 'soft', weight: 'medium', dash: 'solid', leastScale: 0, lines: person.lines.build(true) },
    ...(vehicle === null ? [] : [vehicle.stroke]),
    leaders.stroke,
  ];
  const dimensions = [
    ...heightDimensions(parts, stage, reduction, format),
    ...acrossDimensions(parts, side, stage, reduction, format),
  ];
  const drawing = {
    title: titles[side],
    fills: [],
    strokes,
    marks: [],
    dimensions,
    labels: [leaders.labels, series('vehicle', [person.label(format), ...(vehicle === null ? [] : [vehicle.label])])],
    notes: [
      notes[side],
      ...(side === 'front' && openingSpan(parts) !== null
        ? ['the opening is open above but for what hangs there']
        : []),
      ...(ceilings.levels.length > 0 ? ['ceilings are drawn though a wall hides them; dashed: their travel'] : []),
    ],
    legend: [],
  };
  const extent = drawingExtent({ ...drawing, box: noBox });
  return { ...drawing, box: { ...extent, leftMm: Math.min(extent.leftMm, leaders.leftMm) } };
}

const noBox: Box = { leftMm: 0, topMm: 0, rightMm: 0, bottomMm: 0 };
const titles: Readonly<Record<ElevationSide, string>> = {
  front: 'The stage from its open side, level',
  back: 'The stage from behind, level',
  right: 'The stage from the side, level',
};
const notes: Readonly<Record<ElevationSide, string>> = {
  front: 'seen level from outside, from the side to which the walls open',
  back: 'seen level from outside, against the open side',
  right: 'seen level from outside, the open side on the left',
};
/** Clear floor on the left, full size, on which the person stands. */
const personRoomMm = 1400;

function levelsOf(parts: StageParts, ofCeilings: readonly Level[], stage: Box, format: Format): readonly Level[] {
  const { clearHeightMm } = parts.hall;
  const isAny = parts.walls.some(({ table }) => table.count > 0);
  const levels: readonly Level[] = [
    ...(isAny ? [{ text: 'reach', heightMm: parts.reachMm, fromMm: stage.leftMm - personRoomMm }] : []),
    ...ofCeilings,
    ...(clearHeightMm === null
      ? []
      : [{ text: 'hall, clear', heightMm: clearHeightMm, fromMm: stage.leftMm - personRoomMm }]),
  ];
  return levels
    .map((level) => ({ ...level, text: `${level.text} ${format(level.heightMm, 'mm')}` }))
    .sort((a, b) => a.heightMm - b.heightMm);
}

/** A thin line from each level to its text on the left, where texts keep clear of each other; `leftMm`: where the longest begins. */
function drawLevels(levels: readonly Level[], leftMm: number, reduction: number) {
  const lines = new LineBuilder();
  const heights = spreadLevels(
    levels.map(({ heightMm }) => heightMm),
    levelGapMm * reduction,
  );
  const endMm = leftMm - 4 * reduction;
  const labels = levels.map(({ text, heightMm, fromMm }, i): Label => {
    const y = -heights[i]!;
    lines.moveTo(fromMm, -heightMm).lineTo(leftMm, -heightMm).lineTo(endMm, y);
    return { text, xMm: endMm, yMm: y, asideX: -1, asideY: 0, gap: 0.3 };
  });
  const stroke: Stroke = {
    layer: 'dimensions',
    pen: 'soft',
    weight: 'hair',
    dash: 'solid',
    leastScale: 0,
    lines: lines.build(),
  };
  const letters = Math.max(0, ...labels.map(({ text }) => text.length));
  const textMm = (letters * 0.6 + 0.7) * paperStyle.lettersMm.normal;
  return { stroke, labels: series('dimensions', labels), leftMm: endMm - textMm * reduction };
}

/** On the right: the foot of every wall, its bands where it has several, and its top, each set of walls of one kind once. */
function heightDimensions(parts: StageParts, stage: Box, reduction: number, format: Format): readonly Dimension[] {
  const seen = new Set<string>();
  let x = stage.rightMm + besideMm * reduction;
  return parts.walls.flatMap((wall) => {
    if (wall.table.count === 0) return [];
    const bands = bandsOf(wall);
    const key = bands.join();
    if (seen.has(key)) return [];
    seen.add(key);
    const between = (fromMm: number, toMm: number): Dimension => ({
      x1Mm: x,
      y1Mm: -fromMm,
      x2Mm: x,
      y2Mm: -toMm,
      text: format(toMm - fromMm, 'mm'),
    });
    const [foot, top] = [bands[0]!, bands.at(-1)!];
    const steps = [
      ...(foot > 0.5 ? [between(0, foot)] : []),
      ...bands.slice(1).map((edge, i) => between(bands[i]!, edge)),
    ];
    x += stepMm * reduction;
    if (steps.length === 1) return steps;
    const whole = between(0, top);
    x += stepMm * reduction;
    return [...steps, whole];
  });
}

/** Below the floor: the opening where it is in view, and how wide the stage is. */
function acrossDimensions(
  parts: StageParts,
  side: ElevationSide,
  stage: Box,
  reduction: number,
  format: Format,
): readonly Dimension[] {
  const level = (fromMm: number, toMm: number, step: number, text: string): Dimension => {
    const y = (besideMm + stepMm * step) * reduction;
    return { x1Mm: fromMm, y1Mm: y, x2Mm: toMm, y2Mm: y, text };
  };
  const span = side === 'front' ? openingSpan(parts) : null;
  const opening = span === null ? [] : [level(span[0], span[1], 0, `opening ${format(span[1] - span[0], 'mm')}`)];
  return [...opening, level(stage.leftMm, stage.rightMm, opening.length, format(stage.rightMm - stage.leftMm, 'mm'))];
}

/** The opening across the picture from the front, from the left; null where there is none. */
function openingSpan(parts: StageParts): readonly [number, number] | null {
  const opening = findOpening(parts.walls);
  if (opening === null) return null;
  const view = elevationView(parts.walls, 'front');
  const [a, b] = [acrossMm(view, opening.from), acrossMm(view, opening.to)];
  return [Math.min(a, b), Math.max(a, b)];
}

/** What must drive in, in the middle of the opening; null where it is not stated or there is no opening. */
function vehicleIn(parts: StageParts, format: Format) {
  const span = openingSpan(parts);
  const { widthMm, heightMm } = parts.vehicle;
  if (span === null || widthMm === null || heightMm === null) return null;
  const middle = (span[0] + span[1]) / 2;
  const lines = new LineBuilder().rectangle(middle - widthMm / 2, -heightMm, middle + widthMm / 2, 0);
  const stroke: Stroke = {
    layer: 'vehicle',
    pen: 'soft',
    weight: 'medium',
    dash: 'dashed',
    leastScale: 0,
    lines: lines.build(true),
  };
  const label: Label = {
    text: `drives in: ${format(widthMm, 'mm')} wide, ${format(heightMm, 'mm')} high`,
    short: `${format(heightMm, 'mm')} high`,
    xMm: middle,
    yMm: -heightMm,
    asideX: 0,
    asideY: -1,
    gap: 0.3,
  };
  return { stroke, label };
}

function drawPerson(xMm: number) {
  const lines = new LineBuilder();
  for (const outline of personOutline) {
    for (let i = 0; i < outline.length; i += 2) {
      if (i === 0) lines.moveTo(xMm + outline[0]!, outline[1]!);
      else lines.lineTo(xMm + outline[i]!, outline[i + 1]!);
    }
  }
  const label = (format: Format): Label => ({
    text: `person ${format(personMm, 'mm')}`,
    short: format(personMm, 'mm'),
    xMm,
    yMm: 0,
    asideX: 0,
    asideY: 1,
    gap: 0.5,
  });
  return { lines, label };
}

function series(layer: LabelSeries['layer'], labels: readonly Label[]): LabelSeries {
  return {
    layer,
    pen: 'ink',
    size: 'normal',
    leastScale: 0,
    count: labels.length,
    at: (i) => labels[i]!,
    numberOf: null,
  };
}
