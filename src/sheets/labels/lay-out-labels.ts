import type { Box } from '../drawing';
import { itemLink } from '../item-link';
import { mapLines } from '../map-lines';
import type { Page, PageItem } from '../pages/page';
import { pageStyle } from '../pages/page-style';
import { paperById } from '../pages/papers';
import { ruleBoxes } from '../pages/rule-lines';
import { linesHeightMm, writeText } from '../pages/write-text';
import { quietModules } from '../qr-path';
import { fitLabel } from './fit-label';
import { type LabelCode, labelCode } from './label-code';
import { type LabelGrid, labelBox, labelSize } from './label-grid';
import { labelWords } from './label-words';
import type { LabelledCable } from './labelled-cable';

export interface LabelOptions {
  /** Of the page that codes lead to; null: no codes. */
  readonly address: string | null;
  readonly planId: string;
  /** Labels that were taken off the first sheet already. */
  readonly used: number;
  /** A fine line round each label, to cut plain paper by. */
  readonly hasLines: boolean;
}

/** Sheets of labels; a page is laid out when it is asked for. */
export interface LabelSheets {
  readonly labels: number;
  readonly count: number;
  /** Whether codes are asked for and have room on labels of this size. */
  readonly hasCodes: boolean;
  readonly page: (index: number) => Page;
}

/** Labels for both ends of each cable, one after the other along the rows; null where the grid leaves no room for one. */
export function layOutLabels(
  cables: readonly LabelledCable[],
  grid: LabelGrid,
  options: LabelOptions,
): LabelSheets | null {
  const size = labelSize(grid);
  if (size === null) return null;
  const labels = 2 * cables.length;
  const aSheet = grid.rows * grid.columns;
  const used = Math.min(options.used, aSheet - 1);
  const count = labels === 0 ? 0 : Math.ceil((used + labels) / aSheet);
  const { widthMm, heightMm } = paperById(grid.paper);
  const codeOf = rememberCodes(options, innerRoom(size));
  return {
    labels,
    count,
    hasCodes: cables[0] !== undefined && codeOf(cables[0]) !== null,
    page(index) {
      const items: PageItem[] = [];
      const boxes: Box[] = [];
      for (let place = 0; place < aSheet; place++) {
        const label = index * aSheet + place - used;
        const cable = cables[label >> 1];
        if (label < 0 || cable === undefined) continue;
        const box = labelBox(grid, size, place);
        boxes.push(box);
        items.push(...labelItems(cable, label % 2 === 0 ? 'from' : 'to', box, codeOf(cable)));
      }
      const lines = options.hasLines && boxes.length > 0 ? [ruleBoxes(boxes, pageStyle.strokes.row)] : [];
      return {
        widthMm,
        heightMm,
        title: `Labels, sheet ${index + 1} of ${count}`,
        partId: 'labels',
        items: [...lines, ...items],
      };
    },
  };
}

interface PlacedCode {
  readonly code: LabelCode;
  readonly link: string;
}

/** Both ends, and the jumpers behind a port, lead to the same: a code is made once. */
function rememberCodes({ address, planId }: LabelOptions, room: ReturnType<typeof innerRoom>) {
  const made = new Map<string, PlacedCode | null>();
  return ({ item }: LabelledCable): PlacedCode | null => {
    if (address === null) return null;
    const link = itemLink(address, planId, item);
    if (!made.has(link)) {
      const code = labelCode(link, room);
      made.set(link, code === null ? null : { code, link });
    }
    return made.get(link) ?? null;
  };
}

/** Kept free inside a label's edge, for sheets that run through the printer a little askew. */
function padMm(size: { readonly widthMm: number; readonly heightMm: number }): number {
  return Math.min(1.5, 0.06 * Math.min(size.widthMm, size.heightMm));
}

function innerRoom(size: { readonly widthMm: number; readonly heightMm: number }) {
  const pad = padMm(size);
  return { widthMm: size.widthMm - 2 * pad, heightMm: size.heightMm - 2 * pad };
}

function labelItems(
  cable: LabelledCable,
  end: 'from' | 'to',
  box: Box,
  placed: PlacedCode | null,
): readonly PageItem[] {
  const size = { widthMm: box.rightMm - box.leftMm, heightMm: box.bottomMm - box.topMm };
  const pad = padMm(size);
  const room = innerRoom(size);
  const codeMm = placed?.code.sideMm ?? 0;
  const gapMm = placed === null ? 0 : pad;
  const lines = fitLabel(labelWords(cable, end), { widthMm: room.widthMm - codeMm - gapMm, heightMm: room.heightMm });
  const high = lines.reduce((sum, { style }) => sum + linesHeightMm(style, 1), 0);
  const leftMm = box.leftMm + pad + codeMm + gapMm;
  let topMm = box.topMm + pad + (room.heightMm - high) / 2;
  const texts = lines.map(({ text, style }) => {
    const item = writeText(text, leftMm, topMm, style);
    topMm += linesHeightMm(style, 1);
    return item;
  });
  if (placed === null) return texts;
  return [...codeItems(placed, box.leftMm + pad, box.topMm + pad + (room.heightMm - codeMm) / 2), ...texts];
}

function codeItems({ code: { path, sideMm }, link }: PlacedCode, leftMm: number, topMm: number): readonly PageItem[] {
  const module = sideMm / (path.modules + 2 * quietModules);
  const lines = mapLines(path.lines, (x, y) => [
    leftMm + (x + quietModules) * module,
    topMm + (y + quietModules) * module,
  ]);
  return [
    { kind: 'path', lines, fill: '#000000', stroke: null },
    { kind: 'link', box: { leftMm, topMm, rightMm: leftMm + sideMm, bottomMm: topMm + sideMm }, url: link },
  ];
}
