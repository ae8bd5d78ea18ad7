import { expect, test } from 'vitest';
import { starterPanels } from '../../src/plan/catalogue/starter-panels';
import { parsePlan } from '../../src/plan/parse-plan';
import type { Plan } from '../../src/plan/plan';
import { serialisePlan } from '../../src/plan/serialise-plan';
import type { Wall } from '../../src/plan/wall';
import { samplePlan } from './sample-plan';

const times = <Item>(count: number, item: (k: number) => Item) => Array.from({ length: count }, (_, k) => item(k));
/** The longest id there can be, and the longest line of text: each of its characters takes two in the file. */
const longId = (k: number) => String(k).padStart(64, 'x');
const longName = '"'.repeat(200);
const longNumber = -89.123_456_789_012_34;

const wall = (k: number): Wall => ({
  id: longId(k),
  letter: 'ABCDEFGHIJKLM'[k % 13]!,
  name: longName,
  place: { xMm: -999_999.999, yMm: -999_999.999, turnDeg: longNumber },
  baseMm: 999_999.999,
  support: 'stands',
  path: times(500, (n) => ({
    id: longId(n),
    columns: 5000,
    jointDeg: longNumber,
    mixed: { jointDeg: longNumber, count: 5000 },
    jointBeforeDeg: longNumber,
  })),
  bands: times(50, (n) => ({ id: longId(n), panelId: longId(1), rows: 1000, turnDeg: 270 })),
  holes: times(200, (n) => ({
    id: longId(n),
    name: longName,
    segmentId: longId(1),
    column: 5000,
    row: 5000,
    columns: 5000,
    rows: 5000,
  })),
});

test('the largest plan that the schema accepts can be saved and opened', () => {
  const plan: Plan = samplePlan('flat');
  const anchor = { surfaceId: longId(1), segmentId: longId(2), column: -10_000, row: -10_000 };
  plan.walls = times(13, wall);
  plan.alternatives = times(50, (k) => ({ id: longId(k), name: longName, wall: wall(k) }));
  plan.handChanges = times(20_000, (k) => ({ kind: 'join', id: longId(k), from: anchor, to: anchor }));
  plan.existingWiring = {
    source: longName,
    rows: times(250_000, () => ({ panel: 'P'.repeat(24), port: 'Q'.repeat(24), place: 100_000 })),
  };
  plan.catalogue.panels = times(200, (k) => ({
    ...starterPanels[0]!,
    id: longId(k),
    name: longName,
    lock: { stepsDeg: times(200, () => longNumber), highestStackMm: 99_999.999, longestHangMm: 99_999.999 },
    data: {
      chainPanels: 10_000,
      passesUnpowered: false,
      drivenBy: times(50, (n) => ({ processorId: longId(n), portPixels: 100_000_000 })),
    },
  }));
  plan.wish.stock = times(1200, (k) => ({ itemId: longId(k), owned: 1_000_000, obtainable: 1_000_000 }));
  const text = serialisePlan(plan);
  // Measured: 69 M characters; the door is shut at 100 M.
  expect(text.length).toBeGreaterThan(60_000_000);
  const opened = parsePlan(text);
  expect('refused' in opened ? opened.sentence : opened.plan.handChanges.length).toBe(20_000);
});
