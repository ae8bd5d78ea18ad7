import { dimensionSegments } from '../sheets/dimension-segments';
import type { Box, Drawing, Fill, Stroke } from '../sheets/drawing';
import { drawingExtent } from '../sheets/drawing-extent';
import { type Lettering, letterDrawing } from '../sheets/letter-drawing';
import { paintColour } from '../sheets/paint-colour';
import { paperStyle } from '../sheets/paper-style';
import { wholeMicrometres } from '../sheets/whole-micrometres';
import { escapeXml } from './escape-xml';
import { pathData } from './path-data';

/** Width of a sign of a fixed-width face, as a share of its height; generously, for faces that stand in for it. */
const signWidth = 0.62;
/** From the middle of a letter down to the line that it stands on, as a share of its height. */
const dropShare = 0.35;
/** From one line of the heading or the legend to the next, as a share of the height of its letters. */
const lineShare = 1.5;

/**
 * A drawing as an SVG file that stands alone: as wide and high as it is on paper at 1 : `reduction`, its coordinates
 * millimetres of the thing drawn. One path for each fill, stroke and mark that is worth showing at that scale, its layer
 * as its class. Title, scale and notes stand above, the legend below; fonts are not in the file. The same drawing gives
 * the same bytes.
 */
export function drawingToSvg(drawing: Drawing, reduction: number): string {
  const scale = paperStyle.pixelsAMm / reduction;
  const isShown = ({ leastScale, lines }: Fill | Stroke) => scale >= leastScale && lines.ends.length > 0;
  const extent = drawingExtent(drawing);
  const marginMm = paperStyle.marginMm * reduction;
  const window: Box = {
    leftMm: extent.leftMm - marginMm,
    topMm: extent.topMm - marginMm,
    rightMm: extent.rightMm + marginMm,
    bottomMm: extent.bottomMm + marginMm,
  };
  const heading = headingOf(drawing, window, reduction);
  const legend = legendOf(drawing, window, reduction);
  const left = wholeMicrometres(window.leftMm);
  const top = wholeMicrometres(window.topMm - heading.heightMm);
  const width = wholeMicrometres(Math.max(window.rightMm - left, heading.widthMm, legend.widthMm));
  const height = wholeMicrometres(window.bottomMm + legend.heightMm - top);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${wholeMicrometres(width / reduction)}mm" height="${wholeMicrometres(height / reduction)}mm" viewBox="${left} ${top} ${width} ${height}" role="img" ${face}>`,
    `<title>${escapeXml(drawing.title)}</title>`,
    `<desc>${escapeXml(under(drawing, reduction))}</desc>`,
    `<rect x="${left}" y="${top}" width="${width}" height="${height}" fill="${paperStyle.sheet}"/>`,
    ...drawing.fills.filter(isShown).map(fillPath),
    ...drawing.strokes.filter(isShown).map((stroke) => strokePath(stroke, reduction)),
    ...drawing.marks.filter(isShown).map(fillPath),
    ...dimensionsPath(drawing, reduction),
    // A rim of the sheet's colour, so that lines do not cross the letters.
    `<g text-anchor="middle" stroke="${paperStyle.sheet}" stroke-linejoin="round" paint-order="stroke">`,
    ...letterDrawing(drawing, window, reduction).map(textElement),
    '</g>',
    ...heading.elements,
    ...legend.elements,
    '</svg>',
    '',
  ].join('\n');
}

function fillPath({ layer, paint, lines }: Fill): string {
  return `<path class="${layer}" fill="${paintColour(paint)}" d="${pathData(lines)}"/>`;
}

function strokePath({ layer, pen, weight, dash, lines }: Stroke, reduction: number): string {
  const dashes = paperStyle.dashesMm[dash].map((mm) => mm * reduction);
  return `<path class="${layer}" fill="none" stroke="${paperStyle.pens[pen]}" stroke-width="${wholeMicrometres(paperStyle.widthsMm[weight] * reduction)}"${dashes.length === 0 ? '' : ` stroke-dasharray="${dashes.join(' ')}"`} d="${pathData(lines)}"/>`;
}

function dimensionsPath({ dimensions }: Drawing, reduction: number): readonly string[] {
  if (dimensions.length === 0) return [];
  const d = dimensions
    .flatMap((dimension) => dimensionSegments(dimension, paperStyle.tickMm * reduction))
    .map((segment) => segment.map(wholeMicrometres))
    .map(([x1, y1, x2, y2]) => `M${x1} ${y1}L${x2} ${y2}`);
  const width = wholeMicrometres(paperStyle.widthsMm.fine * reduction);
  return [
    `<path class="dimensions" fill="none" stroke="${paperStyle.pens.ink}" stroke-width="${width}" d="${d.join('')}"/>`,
  ];
}

const face = `font-family="'IBM Plex Mono', monospace"`;

/** A text in the middle of its place. */
function textElement({ text, layer, pen, xMm, yMm, heightMm, turned }: Lettering): string {
  const x = wholeMicrometres(xMm);
  const y = wholeMicrometres(yMm);
  const turn = turned ? ` transform="rotate(-90 ${x} ${y})"` : '';
  return `<text class="${layer}" x="${x}" y="${wholeMicrometres(yMm + heightMm * dropShare)}"${turn} font-size="${wholeMicrometres(heightMm)}" fill="${paperStyle.pens[pen]}" stroke-width="${wholeMicrometres(heightMm / 4)}">${escapeXml(text)}</text>`;
}

interface Block {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly elements: readonly string[];
}

/** Title, and under it scale and notes. */
function headingOf(drawing: Drawing, window: Box, reduction: number): Block {
  const { large, normal } = paperStyle.lettersMm;
  const lines = [
    { text: drawing.title, heightMm: large * reduction },
    { text: under(drawing, reduction), heightMm: normal * reduction },
  ];
  const marginMm = paperStyle.marginMm * reduction;
  let y = window.topMm;
  const elements = lines.toReversed().map(({ text, heightMm }) => {
    const element = startingText(text, window.leftMm + marginMm, y, heightMm);
    y -= heightMm * lineShare;
    return element;
  });
  return {
    widthMm: Math.max(...lines.map(({ text, heightMm }) => text.length * heightMm * signWidth)) + 2 * marginMm,
    heightMm: window.topMm - y + marginMm / 2,
    elements: elements.toReversed(),
  };
}

function under({ notes }: Drawing, reduction: number): string {
  return [`1:${reduction}`, ...notes].join('; ');
}

/** A patch of each tint with what it stands for, one under the other. */
function legendOf({ legend }: Drawing, window: Box, reduction: number): Block {
  const heightMm = paperStyle.lettersMm.normal * reduction;
  const marginMm = paperStyle.marginMm * reduction;
  const x = window.leftMm + marginMm;
  const elements = legend.flatMap(({ tint, text }, i) => {
    const y = window.bottomMm + i * heightMm * lineShare;
    return [
      `<rect x="${wholeMicrometres(x)}" y="${wholeMicrometres(y - heightMm * (1 - dropShare))}" width="${wholeMicrometres(heightMm * 1.4)}" height="${wholeMicrometres(heightMm)}" fill="${paintColour(tint)}" stroke="${paperStyle.pens.ink}" stroke-width="${wholeMicrometres(paperStyle.widthsMm.hair * reduction)}"/>`,
      startingText(text, x + heightMm * 2, y + heightMm * dropShare, heightMm),
    ];
  });
  return {
    widthMm: Math.max(0, ...legend.map(({ text }) => (text.length * signWidth + 2) * heightMm + 2 * marginMm)),
    heightMm: legend.length === 0 ? 0 : legend.length * heightMm * lineShare + marginMm / 2,
    elements,
  };
}

/** A text from its first sign on, standing on y. */
function startingText(text: string, xMm: number, yMm: number, heightMm: number): string {
  return `<text x="${wholeMicrometres(xMm)}" y="${wholeMicrometres(yMm)}" font-size="${wholeMicrometres(heightMm)}" fill="${paperStyle.pens.ink}">${escapeXml(text)}</text>`;
}
