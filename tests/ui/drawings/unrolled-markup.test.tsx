import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { drawUnrolled } from '../../../src/sheets/draw-unrolled';
import { placeLabels } from '../../../src/sheets/place-labels';
import { DimensionLines } from '../../../src/ui/drawings/DimensionLines';
import { ScaleBar } from '../../../src/ui/drawings/ScaleBar';
import { Shapes } from '../../../src/ui/drawings/Shapes';
import { Texts } from '../../../src/ui/drawings/Texts';
import { textHeights } from '../../../src/ui/drawings/text-heights';
import { fitView } from '../../../src/ui/drawings/view';
import { stageFixture } from '../../arbitraries/evaluation-fixture';

const format = (mm: number) => `${mm / 1000} m`;
const size = { width: 900, height: 700 };
const margins = { left: 40, right: 80, top: 10, bottom: 10 };

function markup(columns: number, rows: number) {
  const parts = stageFixture({ columns, rows, jointDeg: 0.3, splitAboveRow: Math.floor(rows / 2) });
  const strips = { count: 4, aboveMm: 2000, belowMm: 2500 };
  const { drawing } = drawUnrolled(parts, { surfaceId: 'wall-a', from: 'behind', tint: 'port', strips }, format)!;
  const view = fitView(drawing.box, size, margins);
  const texts = placeLabels(drawing.labels, drawing.dimensions, {
    ...view,
    widthPx: size.width,
    heightPx: size.height,
    sizes: textHeights,
  });
  return renderToStaticMarkup(
    <svg aria-hidden="true">
      <Shapes drawing={drawing} view={view} size={size} />
      <DimensionLines dimensions={drawing.dimensions} view={view} />
      <Texts texts={texts} />
    </svg>,
  );
}

describe('the unrolled drawing on screen', () => {
  it('has as few paths for 20,000 panels as for a small wall', () => {
    const paths = (html: string) => html.match(/<path/g)!.length;
    expect(paths(markup(1000, 20))).toBeLessThanOrEqual(paths(markup(20, 8)));
    expect(paths(markup(20, 8))).toBeLessThan(24);
  });
  it('paints fills first, then lines, then texts', () => {
    const html = markup(20, 8);
    expect(html.indexOf('tint-')).toBeLessThan(html.indexOf('sheet-line'));
    expect(html.lastIndexOf('sheet-line')).toBeLessThan(html.indexOf('<text'));
  });
  it('turns the text of an upright dimension, and no other', () => {
    const turned = markup(20, 8).match(/<text[^>]*rotate\(-90[^>]*>[^<]*/g)!;
    expect(turned).toHaveLength(1);
    expect(turned[0]).toMatch(/4 m$/);
  });
});

it('ScaleBar says its length and is as long as it says', () => {
  const html = renderToStaticMarkup(<ScaleBar scale={0.06} lengths="metric" format={format} />);
  expect(html).toContain('Scale bar of 2 m');
  // 2000 mm at 0.06 px a mm, and the 2 px of its end ticks.
  expect(html).toContain('width="122"');
});
