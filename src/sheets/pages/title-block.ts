import type { Box } from '../drawing';
import { cautionMark } from './caution-mark';
import { fitText } from './fit-text';
import type { PageItem } from './page';
import { pageStyle, type TextStyle } from './page-style';
import { ruleBoxes, ruleLines } from './rule-lines';
import { linesHeightMm, writeLines, writeText } from './write-text';

/** What every page of a set says of its plan. */
export interface TitleBlock {
  readonly plan: string;
  readonly revision: string;
  /** Day of the print by the reader's clock, as it is to be read. */
  readonly date: string;
  /** First digits of the hash of what is planned: two sets with the same are of the same plan. */
  readonly fingerprint: string;
  /** Number of checks that stop the plan. */
  readonly stops: number;
}

/** What a page says of itself. */
export interface SheetWords {
  readonly title: string;
  readonly side: string | null;
  readonly caution: string | null;
  /** '1:50'; null where nothing is drawn to scale. */
  readonly scale: string | null;
  readonly number: number;
  readonly of: number;
}

interface Cell {
  readonly name: string;
  readonly value: string;
  /** Share of what is left of the row after the cells of fixed width; or a width in mm. */
  readonly share?: number;
  readonly widthMm?: number;
  readonly strong?: boolean;
}

const cautionMm = 7.4;
const rowMm = 9.4;
const padMm = 1.4;
/** From here on all cells stand in one row. */
const oneRowMm = 245;

/** Height of the title block at the foot of a frame. */
export function titleBlockHeightMm(frame: Box, hasCaution: boolean): number {
  const rows = frame.rightMm - frame.leftMm >= oneRowMm ? 1 : 2;
  return rows * rowMm + (hasCaution ? cautionMm : 0);
}

/** Frame and title block, with the caution on top of it. */
export function drawTitleBlock(frame: Box, block: TitleBlock, words: SheetWords): readonly PageItem[] {
  const { leftMm, rightMm, bottomMm } = frame;
  const rows = rowsOf(block, words, rightMm - leftMm);
  const topMm = bottomMm - titleBlockHeightMm(frame, words.caution !== null);
  const firstMm = bottomMm - rows.length * rowMm;
  const edges = rows.map((_, row) => firstMm + row * rowMm);
  return [
    ruleBoxes([frame], pageStyle.strokes.frame),
    ruleLines([[leftMm, topMm, rightMm, topMm]], pageStyle.strokes.frame),
    ...(words.caution === null ? [] : cautionLine(words.caution, leftMm, topMm, rightMm)),
    ruleLines(
      [
        ...edges.filter((edge) => edge > topMm).map((edge) => [leftMm, edge, rightMm, edge] as const),
        ...rows.flatMap((row, i) =>
          inner(row, leftMm, rightMm).map((x) => [x, edges[i]!, x, edges[i]! + rowMm] as const),
        ),
      ],
      pageStyle.strokes.cell,
    ),
    ...rows.flatMap((row, i) => rowTexts(row, leftMm, rightMm, edges[i]!)),
  ];
}

function rowsOf(block: TitleBlock, words: SheetWords, widthMm: number): readonly (readonly Cell[])[] {
  const named: readonly Cell[] = [
    { name: 'Plan', value: block.plan.trim() === '' ? '–' : block.plan, share: 1, strong: true },
    { name: 'Title', value: words.title, share: 1, strong: true },
  ];
  const details: readonly Cell[] = [
    { name: 'Revision', value: block.revision === '' ? '–' : block.revision, widthMm: 18 },
    { name: 'Date', value: block.date, widthMm: 20 },
    { name: 'Side', value: words.side ?? '–', widthMm: 32 },
    { name: 'Scale', value: words.scale ?? '–', widthMm: 15 },
    { name: 'Plan fingerprint', value: block.fingerprint, widthMm: 21 },
    { name: 'Checks that stop it', value: String(block.stops), widthMm: 23, strong: block.stops > 0 },
  ];
  const sheet: Cell = { name: 'Sheet', value: `${words.number} of ${words.of}`, widthMm: 24, strong: true };
  if (widthMm >= oneRowMm) return [[...named, ...details, sheet]];
  const [revision, date, side, scale, fingerprint, stops] = details;
  return [
    [...named, sheet],
    [revision!, date!, { name: 'Side', value: side!.value, share: 1 }, scale!, fingerprint!, stops!],
  ];
}

/** Left edge of each cell, and the right edge of the last. */
function edgesOf(cells: readonly Cell[], leftMm: number, rightMm: number): readonly number[] {
  const fixed = cells.reduce((sum, { widthMm = 0 }) => sum + widthMm, 0);
  const shares = cells.reduce((sum, { share = 0 }) => sum + share, 0);
  const edges = [leftMm];
  for (const { widthMm, share = 0 } of cells) {
    edges.push(edges.at(-1)! + (widthMm ?? ((rightMm - leftMm - fixed) * share) / shares));
  }
  return edges;
}

function inner(cells: readonly Cell[], leftMm: number, rightMm: number): readonly number[] {
  return edgesOf(cells, leftMm, rightMm).slice(1, -1);
}

function rowTexts(cells: readonly Cell[], leftMm: number, rightMm: number, topMm: number): readonly PageItem[] {
  const { cell, cellStrong, cellName } = pageStyle.texts;
  const edges = edgesOf(cells, leftMm, rightMm);
  const nameMm = linesHeightMm(cellName, 1);
  return cells.flatMap(({ name, value, strong = false }, i) => {
    const x = edges[i]! + padMm;
    const room = rowMm - nameMm - 1;
    const fitted = fitText(value, strong ? cellStrong : cell, edges[i + 1]! - edges[i]! - 2 * padMm, room);
    const free = room - linesHeightMm(fitted.style, fitted.lines.length);
    return [
      writeText(name, x, topMm + 0.5, cellName),
      ...writeLines(fitted.lines, x, topMm + 0.5 + nameMm + free / 2, fitted.style),
    ];
  });
}

const markMm = 3.6;

function cautionLine(caution: string, leftMm: number, topMm: number, rightMm: number): readonly PageItem[] {
  const foot: TextStyle = pageStyle.texts.foot;
  const x = leftMm + 2 * padMm + markMm;
  const { lines, style } = fitText(caution, foot, rightMm - x - padMm, cautionMm - 1);
  const free = cautionMm - linesHeightMm(style, lines.length);
  return [
    ...cautionMark(leftMm + padMm, topMm + (cautionMm - markMm) / 2, markMm),
    ...writeLines(lines, x, topMm + free / 2, style),
  ];
}
