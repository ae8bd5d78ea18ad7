import type { Drawing, Label } from '../../src/sheets/drawing';
import { LineBuilder } from '../../src/sheets/line-builder';

const label = (text: string, xMm: number, yMm: number, turned = false): Label => ({
  text,
  xMm,
  yMm,
  asideX: 0,
  asideY: 0,
  gap: 0,
  turned,
});

/** A square of 4 x 2 m with its upper left corner at (1000, 500), y down; names as people may type them. */
export function smallDrawing(name = 'Tom & "Ann" <stage> Ø ✓'): Drawing {
  const texts = [label(name, 3000, 1000), label('upright', 2000, 1600, true)];
  return {
    title: name,
    box: { leftMm: 1000, topMm: 500, rightMm: 5000, bottomMm: 2900 },
    fills: [
      {
        layer: 'wall',
        paint: 'sheet',
        leastScale: 0,
        lines: new LineBuilder().rectangle(1000, 500, 5000, 2500).build(true),
      },
      {
        layer: 'tint',
        paint: 1,
        leastScale: 0,
        lines: new LineBuilder().rectangle(1000, 500, 2000, 2500).rectangle(3000, 500, 4000, 2500).build(true),
      },
    ],
    strokes: [
      {
        layer: 'wall',
        pen: 'ink',
        weight: 'cut',
        dash: 'solid',
        leastScale: 0,
        lines: new LineBuilder().rectangle(1000, 500, 5000, 2500).build(true),
      },
      {
        layer: 'limits',
        pen: 'limit',
        weight: 'medium',
        dash: 'dashed',
        leastScale: 0,
        lines: new LineBuilder().segment(1000, 1500, 5000, 1500).segment(1000, 1700, 5000, 1700).build(),
      },
      {
        layer: 'grid',
        pen: 'faint',
        weight: 'hair',
        dash: 'solid',
        leastScale: 1000,
        lines: new LineBuilder().segment(1000, 1501, 5000, 1501).build(),
      },
    ],
    marks: [
      {
        layer: 'homeruns',
        paint: 'accent',
        leastScale: 0,
        lines: new LineBuilder().moveTo(1500, 2400).lineTo(1600, 2500).lineTo(1400, 2500).build(true),
      },
    ],
    dimensions: [{ x1Mm: 1000, y1Mm: 2900, x2Mm: 5000, y2Mm: 2900, text: '4000 mm' }],
    labels: [
      {
        layer: 'zones',
        pen: 'ink',
        size: 'small',
        leastScale: 0,
        count: texts.length,
        at: (i) => texts[i]!,
        numberOf: null,
      },
    ],
    notes: ['seen from behind'],
    legend: [{ tint: 1, text: 'L1 & L2' }],
  };
}
