import type { Box } from '../../../src/sheets/drawing';
import type { Page, PageItem, PageText } from '../../../src/sheets/pages/page';
import { textWidthMm } from '../../../src/sheets/pages/text-width';

/** From the baseline up and down to where accents and tails of both faces end, as shares of the em; read from the font files (OS/2, hhea). */
const upShare = 0.95;
const downShare = 0.25;

/** The rectangle that an item takes; of a line the middle of its width. */
export function itemBox(item: PageItem): Box {
  if (item.kind === 'link') return item.box;
  if (item.kind === 'text') return textBoxMm(item);
  const { xyMm } = item.lines;
  const xs = [...xyMm].filter((_, i) => i % 2 === 0);
  const ys = [...xyMm].filter((_, i) => i % 2 === 1);
  return {
    leftMm: least(xs),
    topMm: least(ys),
    rightMm: -least(xs.map((x) => -x)),
    bottomMm: -least(ys.map((y) => -y)),
  };
}

const least = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);

function textBoxMm({ text, xMm, yMm, sizeMm, face, align, turned }: PageText): Box {
  const long = textWidthMm(text, face, sizeMm);
  const back = { start: 0, middle: long / 2, end: long }[align];
  const [up, down] = [sizeMm * upShare, sizeMm * downShare];
  return turned
    ? { leftMm: xMm - up, rightMm: xMm + down, topMm: yMm - long + back, bottomMm: yMm + back }
    : { leftMm: xMm - back, rightMm: xMm - back + long, topMm: yMm - up, bottomMm: yMm + down };
}

/** Items that stick out of a rectangle, with how far. */
export function outside(items: readonly PageItem[], box: Box): readonly string[] {
  return items.flatMap((item) => {
    const { leftMm, topMm, rightMm, bottomMm } = itemBox(item);
    const far = Math.max(box.leftMm - leftMm, box.topMm - topMm, rightMm - box.rightMm, bottomMm - box.bottomMm);
    if (far <= 0.002) return [];
    return [`${item.kind === 'text' ? item.text : item.kind} by ${far.toFixed(3)} mm`];
  });
}

export function textsOf(items: Page['items']): readonly string[] {
  return items.flatMap((item) => (item.kind === 'text' ? [item.text] : []));
}
