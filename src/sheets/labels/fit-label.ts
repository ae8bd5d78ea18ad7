import { breakLines } from '../pages/break-lines';
import type { PageFace } from '../pages/page';
import { pageStyle, type TextStyle } from '../pages/page-style';
import { textWidthMm } from '../pages/text-width';
import { paperStyle } from '../paper-style';
import type { LabelWords } from './label-words';

export interface LabelLine {
  readonly text: string;
  readonly style: TextStyle;
}

/** Room for the text of a label, in millimetres. */
export interface LabelRoom {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Height of the em of plain lines: what reads well, and the least that reads at all, 5 points (common practice, no source). */
const sizes = { most: 4.2, least: 1.76 } as const;
/** From one size to the next smaller one. */
const shrinkShare = 0.94;
/** Sizes of the name, and of what cable it is, as shares of that of from and to. */
const nameShare = 1.7;
const cableShare = 0.75;

interface Part {
  readonly text: string;
  readonly face: PageFace;
  readonly share: number;
}

/**
 * The lines of a label that go into its room, as large as they go: name, from and to on a line each, what cable it is in
 * smaller letters on as many as it takes; else all of them broken at blanks; else, where that would be too small to read,
 * the name and the far end alone, however small.
 */
export function fitLabel(words: LabelWords, room: LabelRoom): readonly LabelLine[] {
  const strong = (end: LabelWords['end']) => (words.end === end ? 'strong' : 'sans');
  const firm: readonly Part[] = [
    { text: words.name, face: 'strong', share: nameShare },
    { text: words.from, face: strong('from'), share: 1 },
    { text: words.to, face: strong('to'), share: 1 },
  ];
  const cable: Part = { text: words.cable, face: 'sans', share: cableShare };
  const found =
    shrunk((size) => within(joined(firm, breakParts([cable], size, room.widthMm)), size, room)) ??
    shrunk((size) => within(breakParts([...firm, cable], size, room.widthMm), size, room));
  if (found !== null) return found;
  const short: readonly Part[] = [
    { text: words.name, face: 'strong', share: 1.2 },
    { text: words.far, face: 'sans', share: 1 },
  ];
  return linesOf(short, largest(short, room));
}

/** The lines at the largest size that has some. */
function shrunk(linesAt: (size: number) => readonly LabelLine[] | null): readonly LabelLine[] | null {
  for (let size: number = sizes.most; size >= sizes.least; size *= shrinkShare) {
    const lines = linesAt(size);
    if (lines !== null) return lines;
  }
  return null;
}

function within(parts: readonly Part[] | null, size: number, room: LabelRoom): readonly LabelLine[] | null {
  return parts !== null && largest(parts, room) >= size ? linesOf(parts, size) : null;
}

function joined(firm: readonly Part[], rest: readonly Part[] | null): readonly Part[] | null {
  return rest && [...firm, ...rest];
}

/** The greatest size at which each part goes on one line and all of them go into the room. */
function largest(parts: readonly Part[], { widthMm, heightMm }: LabelRoom): number {
  const widest = Math.max(...parts.map(({ text, face, share }) => textWidthMm(text, face, share)));
  const high = parts.reduce((sum, { share }) => sum + share * pageStyle.lineShare, 0);
  return Math.min(sizes.most, heightMm / high, widest > 0 ? widthMm / widest : sizes.most);
}

/** The parts with a line for each stretch between two blanks that has room; null where a word alone is wider. */
function breakParts(parts: readonly Part[], size: number, widthMm: number): readonly Part[] | null {
  const broken = parts.flatMap((part) =>
    breakLines(part.text, part.face, size * part.share, widthMm).map((text) => ({ ...part, text })),
  );
  const words = (all: readonly Part[]) => all.flatMap(({ text }) => text.split(' ')).filter((word) => word !== '');
  return words(broken).length === words(parts).length ? broken : null;
}

function linesOf(parts: readonly Part[], size: number): readonly LabelLine[] {
  // Rounded down to whole micrometres, so that no line comes out wider than it was measured.
  const sizeMm = (share: number) => Math.floor(size * share * 1000) / 1000;
  return parts.map(({ text, face, share }) => ({
    text,
    style: { face, sizeMm: sizeMm(share), colour: paperStyle.pens.ink },
  }));
}
