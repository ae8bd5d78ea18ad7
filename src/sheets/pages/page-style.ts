import { paperStyle } from '../paper-style';
import type { PageFace, PageStroke } from './page';

/** How a text is written: its face, the height of its em, its colour. */
export interface TextStyle {
  readonly face: PageFace;
  readonly sizeMm: number;
  readonly colour: string;
}

const { pens, widthsMm } = paperStyle;
const line = (colour: string, widthMm: number, dashesMm: readonly number[] = []): PageStroke => ({
  colour,
  widthMm,
  dashesMm,
});

/** How pages look around their drawings, in millimetres of the paper: common practice, no source. */
export const pageStyle = {
  texts: {
    title: { face: 'strong', sizeMm: 9, colour: pens.ink },
    lead: { face: 'sans', sizeMm: 4.6, colour: pens.ink },
    heading: { face: 'strong', sizeMm: 4.6, colour: pens.ink },
    aside: { face: 'sans', sizeMm: 3, colour: pens.soft },
    body: { face: 'sans', sizeMm: 3.2, colour: pens.ink },
    caution: { face: 'sans', sizeMm: 2.9, colour: pens.ink },
    tableTitle: { face: 'strong', sizeMm: 3.4, colour: pens.ink },
    head: { face: 'sans', sizeMm: 2.3, colour: pens.soft },
    words: { face: 'sans', sizeMm: 2.8, colour: pens.ink },
    figures: { face: 'mono', sizeMm: 2.6, colour: pens.ink },
    total: { face: 'strong', sizeMm: 2.8, colour: pens.ink },
    value: { face: 'strong', sizeMm: 4.2, colour: pens.ink },
    cell: { face: 'sans', sizeMm: 3, colour: pens.ink },
    cellStrong: { face: 'strong', sizeMm: 3.2, colour: pens.ink },
    cellName: { face: 'sans', sizeMm: 1.9, colour: pens.soft },
    foot: { face: 'sans', sizeMm: 2.2, colour: pens.ink },
    scale: { face: 'mono', sizeMm: 2.3, colour: pens.ink },
  } satisfies Record<string, TextStyle>,
  strokes: {
    frame: line(pens.ink, widthsMm.cut),
    cell: line(pens.ink, widthsMm.fine),
    head: line(pens.ink, widthsMm.medium),
    row: line(pens.faint, widthsMm.hair),
    total: line(pens.ink, widthsMm.fine),
    box: line(pens.ink, widthsMm.fine),
    leader: line(pens.faint, widthsMm.hair, [0.3, 1.2]),
  } satisfies Record<string, PageStroke>,
  /** From one line of a text to the next, as a share of the em. */
  lineShare: 1.3,
  /** Between two blocks, and between columns of them. */
  blockGapMm: 5,
  slotGapMm: 8,
} as const;
