import fc from 'fast-check';
import type { Panel } from '../../src/plan/panel';
import type { Plan } from '../../src/plan/plan';
import type { Processor } from '../../src/plan/processor';
import { panel, processor } from './plan-catalogue';
import { bitDepth, nullable, whole } from './plan-fields';
import { smallPlan } from './small-plan';

const numbers = [1, 2, 3, 4] as const;
const drivenBy = numbers.map((n) => ({ processorId: `processor-${n}`, portPixels: null }));

/** Panels of one width, so that bands of several kinds stand on one another, which every processor drives. */
const usualPanel = (id: string): fc.Arbitrary<Panel> =>
  fc
    .tuple(panel(id), fc.constantFrom(250, 500, 1000), fc.constantFrom(96, 128, 192), nullable(whole(2, 20)))
    .map(([any, heightMm, wide, chainPanels]) => ({
      ...any,
      size: { ...any.size, widthMm: 500, heightMm },
      pixels: { wide, high: Math.round((wide * heightMm) / 500) },
      data: { ...any.data, drivenBy, chainPanels },
    }));

const usualProcessor = (id: string): fc.Arbitrary<Processor> =>
  fc
    .tuple(processor(id), whole(250_000, 3_000_000), whole(40_000, 400_000), whole(2, 20))
    .map(([any, pixels, sheetPixels, ports]) => ({
      ...any,
      canvas: { ...any.canvas, pixels, widest: 8192, highest: 8192, inputGbps: null },
      port: {
        ...any.port,
        lineMbps: 1000,
        sheetPixels,
        lowestRateHz: 24,
        carriageBits: { at8: 24, at10: 30, at12: 36 },
      },
      outlets: any.outlets.kind === 'direct' ? { kind: 'direct', ports } : any.outlets,
    }));

const rate = fc.constantFrom(24, 25, 30, 48, 50, 60).map((frames) => ({ frames, seconds: 1 }));

/** The search for the shortest cable takes seconds where the others take a blink: tests ask for it by name. */
const priority = fc.constantFrom('repeats' as const, 'repeats' as const, 'fewest-ports' as const, 'most-free' as const);

/** Columns of a segment, and ceilings, at most: what is searched for long stays small. */
const most = { repeats: 8, 'fewest-ports': 3, 'most-free': 2 } as const;
const ceilings = { repeats: 2, 'fewest-ports': 0, 'most-free': 0 } as const;

/** Any plan of few panels that are in the catalogue and driven, so that about half have zones and runs. */
export const wiredPlan: fc.Arbitrary<Plan> = fc
  .record({
    plan: smallPlan,
    panels: fc.tuple(...numbers.map((n) => usualPanel(`panel-${n}`))),
    processors: fc.tuple(...numbers.map((n) => usualProcessor(`processor-${n}`))),
    base: fc.record({ rate, depthBits: bitDepth, pictures: fc.constant(1) }),
    freeShare: fc.constantFrom(0, 0.1, 0.3),
    priority,
  })
  .map(({ plan, panels, processors, base, freeShare, priority }) => ({
    ...plan,
    catalogue: { ...plan.catalogue, panels, processors },
    walls: plan.walls.map((wall) => ({
      ...wall,
      baseMm: wall.baseMm % 3000,
      path: wall.path.map((segment) => ({ ...segment, columns: Math.min(most[priority], segment.columns) })),
    })),
    ceilings: plan.ceilings.slice(0, ceilings[priority]),
    picture: { base, bySurface: [], alsoServe: [] },
    signal: { ...plan.signal, processorId: 'processor-1', freeShare, priority },
  }));
