import type { Page, PageFace, PageItem, PageLink, PagePath, PageText } from '../sheets/pages/page';
import { paperStyle } from '../sheets/paper-style';
import { wholeMicrometres } from '../sheets/whole-micrometres';
import { escapeXml } from './escape-xml';
import { pathData } from './path-data';

/**
 * A page of the crew set as an SVG file that stands alone, one unit a millimetre. Fonts are named, not held; without them
 * another face takes their place. The same page gives the same bytes.
 */
export function pageToSvg({ widthMm, heightMm, title, items }: Page): string {
  const width = wholeMicrometres(widthMm);
  const height = wholeMicrometres(heightMm);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" font-kerning="none" style="font-variant-ligatures:none">`,
    `<title>${escapeXml(title)}</title>`,
    `<rect width="${width}" height="${height}" fill="${paperStyle.sheet}"/>`,
    ...items.map(element),
    '</svg>',
    '',
  ].join('\n');
}

function element(item: PageItem): string {
  switch (item.kind) {
    case 'path':
      return pathElement(item);
    case 'text':
      return textElement(item);
    case 'link':
      return linkElement(item);
  }
}

function pathElement({ lines, fill, stroke }: PagePath): string {
  const dashes =
    stroke === null || stroke.dashesMm.length === 0 ? '' : ` stroke-dasharray="${stroke.dashesMm.join(' ')}"`;
  const drawn = stroke === null ? '' : ` stroke="${stroke.colour}" stroke-width="${stroke.widthMm}"${dashes}`;
  return `<path fill="${fill ?? 'none'}"${drawn} d="${pathData(lines)}"/>`;
}

const faces: Readonly<Record<PageFace, string>> = {
  sans: `font-family="'IBM Plex Sans', sans-serif"`,
  strong: `font-family="'IBM Plex Sans', sans-serif" font-weight="600"`,
  mono: `font-family="'IBM Plex Mono', monospace"`,
};

/** Width of the rim on both sides together, as a share of the em. */
const rimShare = 0.25;

function textElement({ text, xMm, yMm, sizeMm, face, align, turned, colour, rim }: PageText): string {
  const x = wholeMicrometres(xMm);
  const y = wholeMicrometres(yMm);
  const anchor = align === 'start' ? '' : ` text-anchor="${align}"`;
  const turn = turned ? ` transform="rotate(-90 ${x} ${y})"` : '';
  const rimmed = rim
    ? ` stroke="${paperStyle.sheet}" stroke-width="${wholeMicrometres(sizeMm * rimShare)}" stroke-linejoin="round" paint-order="stroke"`
    : '';
  return `<text x="${x}" y="${y}" font-size="${wholeMicrometres(sizeMm)}" ${faces[face]} fill="${colour}" xml:space="preserve"${anchor}${turn}${rimmed}>${escapeXml(text)}</text>`;
}

/** A link's place, unseen: what it says stands beside or under it. */
function linkElement({ box: { leftMm, topMm, rightMm, bottomMm }, url }: PageLink): string {
  const width = wholeMicrometres(rightMm - leftMm);
  const height = wholeMicrometres(bottomMm - topMm);
  return `<a href="${escapeXml(url)}"><rect x="${wholeMicrometres(leftMm)}" y="${wholeMicrometres(topMm)}" width="${width}" height="${height}" fill="none" pointer-events="all"/></a>`;
}
