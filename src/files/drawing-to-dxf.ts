import {
  DxfWriter,
  HatchBoundaryPaths,
  HatchPolylineBoundary,
  HatchPredefinedPatterns,
  LWPolylineFlags,
  pattern,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  TrueColor,
  Units,
  vertex,
} from '@tarikjabiri/dxf';
import { dimensionSegments } from '../sheets/dimension-segments';
import type { Dash, Drawing, Fill, Layer, Lines } from '../sheets/drawing';
import { drawingExtent } from '../sheets/drawing-extent';
import { type Lettering, letterDrawing } from '../sheets/letter-drawing';
import { paintColour } from '../sheets/paint-colour';
import { paperStyle } from '../sheets/paper-style';
import { wholeMicrometres } from '../sheets/whole-micrometres';

/** Colour of each layer by its number in the format: 7 is black or white, whichever the ground is not. */
const layerColours: Readonly<Record<Layer, number>> = {
  tint: 254,
  grid: 9,
  wall: 7,
  ceiling: 7,
  runs: 8,
  homeruns: 5,
  zones: 7,
  limits: 1,
  changes: 1,
  hall: 8,
  vehicle: 8,
  dimensions: 7,
  texts: 7,
};

const lineTypes: Readonly<Record<Dash, string>> = { solid: 'Continuous', dashed: 'DASHED', chain: 'CHAIN' };

/**
 * A drawing as DXF (version AC1021, which holds Unicode) in millimetres at full size, y up: layers as in
 * the drawing, polylines, solid fills, texts in the middle of their place, dimensions as a line, two ticks and a text.
 * Letters, ticks and dashes are as large as they must be on paper at 1 : `reduction`. Fills in the colour of the sheet,
 * which only hide, are left out. The same drawing gives the same bytes.
 */
export function drawingToDxf(drawing: Drawing, reduction: number): string {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  dxf.setVariable('$MEASUREMENT', { 70: 1 });
  dxf.setVariable('$LASTSAVEDBY', { 1: 'Voussoir' });
  addLineTypes(dxf, reduction);
  for (const [layer, colour] of Object.entries(layerColours)) dxf.addLayer(layer, colour, lineTypes.solid);

  const extent = drawingExtent(drawing);
  dxf.setVariable('$EXTMIN', corner(extent.leftMm, extent.bottomMm));
  dxf.setVariable('$EXTMAX', corner(extent.rightMm, extent.topMm));

  for (const fill of drawing.fills) addFill(dxf, fill);
  for (const { layer, dash, lines } of drawing.strokes) {
    for (const points of pointsOf(lines)) {
      dxf.addLWPolyline(
        points.map(([x, y]) => ({ point: point2d(x, y) })),
        {
          layerName: layer,
          flags: lines.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None,
          ...(dash === 'solid' ? {} : { lineType: lineTypes[dash] }),
        },
      );
    }
  }
  for (const mark of drawing.marks) addFill(dxf, mark);
  for (const dimension of drawing.dimensions) {
    for (const [x1, y1, x2, y2] of dimensionSegments(dimension, paperStyle.tickMm * reduction)) {
      dxf.addLine(point3d(...up(x1, y1)), point3d(...up(x2, y2)), { layerName: 'dimensions' });
    }
  }
  const marginMm = paperStyle.marginMm * reduction;
  const window = {
    leftMm: extent.leftMm - marginMm,
    topMm: extent.topMm - marginMm,
    rightMm: extent.rightMm + marginMm,
    bottomMm: extent.bottomMm + marginMm,
  };
  for (const lettering of letterDrawing(drawing, window, reduction)) addText(dxf, lettering);
  addHeading(dxf, drawing, reduction, extent.leftMm, window.bottomMm);
  return dxf.stringify();
}

function addLineTypes(dxf: DxfWriter, reduction: number): void {
  for (const dash of ['dashed', 'chain'] as const) {
    // A gap is a negative length.
    const elements = paperStyle.dashesMm[dash].map((mm, i) => (i % 2 === 0 ? mm : -mm) * reduction);
    dxf.addLType(lineTypes[dash], dash === 'dashed' ? 'Dashed __ __ __' : 'Chain ____ _ ____', elements);
  }
}

function addFill(dxf: DxfWriter, { layer, paint, lines }: Fill): void {
  if (paint === 'sheet') return;
  const solid = pattern({ name: HatchPredefinedPatterns.SOLID });
  const colour = typeof paint === 'number' ? { trueColor: `${TrueColor.fromHex(paintColour(paint))}` } : {};
  for (const points of pointsOf(lines)) {
    const boundary = new HatchBoundaryPaths();
    boundary.addPolylineBoundary(new HatchPolylineBoundary(points.map(([x, y]) => vertex(x, y))));
    dxf.addHatch(boundary, solid, { layerName: layer, ...colour });
  }
}

function addText(dxf: DxfWriter, { text, layer, xMm, yMm, heightMm, turned }: Lettering): void {
  const [x, y] = up(xMm, yMm);
  dxf.addText(point3d(x, y), heightMm * capitalShare, oneLine(text), {
    layerName: layer,
    rotation: turned ? 90 : 0,
    horizontalAlignment: TextHorizontalAlignment.Center,
    verticalAlignment: TextVerticalAlignment.Middle,
    secondAlignmentPoint: point3d(x, y),
  });
}

/** The format measures letters by their capitals, the drawing by their whole height. */
const capitalShare = 0.7;

/** Title, scale of the letters and notes, under the drawing. */
function addHeading(dxf: DxfWriter, { title, notes }: Drawing, reduction: number, leftMm: number, topMm: number): void {
  const heightMm = paperStyle.lettersMm.large * reduction;
  const lines = [title, `millimetres at full size; letters for paper at 1:${reduction}`, ...notes];
  for (const [i, line] of lines.entries()) {
    const [x, y] = up(leftMm, topMm + (i + 1) * heightMm * 1.6);
    dxf.addText(point3d(x, y), heightMm * capitalShare, oneLine(line), { layerName: 'texts' });
  }
}

/** A line break would end the value, and two percent signs begin a code of the format: '%%%' is a percent sign itself. */
function oneLine(text: string): string {
  return text.replace(/\p{Cc}+/gu, ' ').replace(/%{2,}/g, (signs) => '%%%'.repeat(signs.length));
}

function* pointsOf({ xyMm, ends }: Lines): Generator<(readonly [number, number])[]> {
  let point = 0;
  for (const end of ends) {
    const points: (readonly [number, number])[] = [];
    for (; point < end; point++) points.push(up(xyMm[point * 2]!, xyMm[point * 2 + 1]!));
    yield points;
  }
}

/** Out of the drawing, y down, into the file, y up. */
function up(xMm: number, yMm: number): readonly [number, number] {
  return [wholeMicrometres(xMm), wholeMicrometres(-yMm)];
}

function corner(xMm: number, yMm: number): Record<number, number> {
  const [x, y] = up(xMm, yMm);
  return { 10: x, 20: y, 30: 0 };
}
