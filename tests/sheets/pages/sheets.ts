import type { BlocksSheet, CrewPart, DrawingSheet } from '../../../src/sheets/crew-set/crew-part';
import type { Cell } from '../../../src/sheets/schedule';
import { smallDrawing } from '../../files/small-drawing';
import { smallSchedule } from '../../files/small-schedule';

const caution = 'Electricity: these figures help to plan. A licensed electrician decides.';

/** Rows '1-001', '1-002' ... */
export function rowsOf(count: number): readonly (readonly Cell[])[] {
  return Array.from({ length: count }, (_, i) => [`1-${String(i + 1).padStart(3, '0')}`, i, 1500, 7, 0.5]);
}

export function tableSheet(rows: number, more: Partial<BlocksSheet> = {}): BlocksSheet {
  return {
    kind: 'blocks',
    title: 'Ports',
    side: null,
    caution,
    blocks: [
      {
        kind: 'table',
        title: 'Ports',
        schedule: smallSchedule(rowsOf(rows), [`${rows} ports`, rows, null, null, null]),
      },
    ],
    ...more,
  };
}

export function drawingSheet(more: Partial<DrawingSheet> = {}): DrawingSheet {
  return {
    kind: 'drawing',
    title: 'Wall A',
    side: 'drawn from behind',
    caution,
    draw: () => smallDrawing('Ann'),
    reductions: [10, 20, 25, 50, 75, 100],
    under: [],
    ...more,
  };
}

/** A cover with contents, two drawings and a table. */
export const smallSet: readonly CrewPart[] = [
  {
    id: 'cover',
    title: 'Cover',
    sheets: [
      {
        kind: 'blocks',
        title: 'Crew set',
        side: null,
        caution: null,
        blocks: [{ kind: 'text', style: 'title', text: 'Lower hall' }, { kind: 'contents' }],
      },
    ],
  },
  { id: 'zones', title: 'Zones', sheets: [drawingSheet({ title: 'Zone 1' }), drawingSheet({ title: 'Zone 2' })] },
  { id: 'ports', title: 'Ports', sheets: [tableSheet(150)] },
];
