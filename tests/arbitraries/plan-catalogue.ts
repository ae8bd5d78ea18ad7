import fc from 'fast-check';
import type { Breakout } from '../../src/plan/breakout';
import type { Cable } from '../../src/plan/cable';
import type { Catalogue } from '../../src/plan/catalogue';
import type { Distro } from '../../src/plan/distro';
import type { Node } from '../../src/plan/node';
import type { Panel } from '../../src/plan/panel';
import type { Processor } from '../../src/plan/processor';
import { amount, count, idOf, label, lengthWithin, listOf, nullable, number, whole } from './plan-fields';

const price = nullable(amount);
const purchase = fc.record({ price, leadDays: nullable(count) });
const usualSize = fc.constantFrom(250, 337.5, 500, 600, 609.6, 1000);
const size = fc.oneof({ weight: 3, arbitrary: usualSize }, { weight: 1, arbitrary: lengthWithin(0.001, 100_000) });
const steps: fc.Arbitrary<number[]> = fc.oneof(
  fc.constantFrom<number[]>([0], [0, 2.5, 5], [-10, -5, 0, 5, 10]),
  fc.array(number(-180, 180), { maxLength: 6 }),
);
const pixels = (most: number) => fc.oneof(fc.constantFrom(104, 128, 192, 216, 256), whole(1, most));

export const panel = (id: string): fc.Arbitrary<Panel> =>
  fc.record({
    id: fc.constant(id),
    name: label,
    size: fc.record({ widthMm: size, heightMm: size, depthMm: size, bevelled: fc.boolean() }),
    pixels: fc.record({ wide: pixels(8192), high: pixels(8192) }),
    massKg: fc.oneof(number(5, 15), number(0, 1000)),
    lock: fc.record({ stepsDeg: steps, highestStackMm: nullable(size), longestHangMm: nullable(size) }),
    light: fc.record({
      refreshHz: nullable(fc.oneof(fc.constantFrom(3840, 7680), number(1, 1e6))),
      refreshMode: fc.constantFrom('locked', 'fixed'),
      peakNits: nullable(number(0, 1e6)),
    }),
    data: fc.record({
      chainPanels: nullable(fc.oneof(whole(1, 40), whole(1, 10_000))),
      passesUnpowered: fc.boolean(),
      drivenBy: fc.uniqueArray(
        fc.record({ processorId: idOf('processor'), portPixels: nullable(whole(1, 100_000_000)) }),
        { selector: (pair) => pair.processorId, maxLength: 4 },
      ),
    }),
    power: fc.record({
      blackW: number(0, 1e5),
      typicalW: number(0, 1e5),
      fullWhiteW: fc.oneof(number(80, 350), number(0, 1e5)),
      powerFactor: number(0.1, 1),
      lowestV: number(1, 1000),
      highestV: number(1, 1000),
      chainA: nullable(number(0.1, 1000)),
      leakageMa: nullable(number(0, 1000)),
      inrushA: nullable(number(0, 10_000)),
    }),
    purchase: fc.record({
      price,
      perCase: fc.oneof(whole(1, 12), whole(1, 1000)),
      caseMassKg: number(0, 1000),
      leadDays: nullable(count),
    }),
  });

const carriage = fc.oneof(
  fc.constantFrom({ at8: 24, at10: 30, at12: 36 }, { at8: 24, at10: 48, at12: 48 }),
  fc.record({ at8: whole(1, 256), at10: whole(1, 256), at12: whole(1, 256) }),
);

export const processor = (id: string): fc.Arbitrary<Processor> =>
  fc.record({
    id: fc.constant(id),
    name: label,
    canvas: fc.record({
      pixels: fc.oneof(whole(2_000_000, 9_000_000), whole(1, 1_000_000_000)),
      widest: fc.oneof(fc.constant(8192), whole(1, 1_000_000)),
      highest: fc.oneof(fc.constant(8192), whole(1, 1_000_000)),
      inputGbps: nullable(number(0.01, 10_000)),
    }),
    port: fc.record({
      lineMbps: fc.oneof(fc.constantFrom(1000, 10_000), number(1, 1e6)),
      sheetPixels: nullable(fc.oneof(fc.constant(650_000), whole(1, 100_000_000))),
      lowestRateHz: fc.oneof(fc.constantFrom(24, 60), number(1, 1000)),
      carriageBits: carriage,
      counting: fc.constantFrom('panels', 'rectangle'),
    }),
    outlets: fc.oneof(
      fc.record({ kind: fc.constant('direct' as const), ports: fc.oneof(whole(1, 20), whole(1, 10_000)) }),
      fc.record({
        kind: fc.constant('breakouts' as const),
        breakoutId: idOf('breakout', 3),
        most: fc.oneof(whole(1, 4), whole(1, 1000)),
      }),
    ),
    powerW: number(0, 1e5),
    massKg: number(0, 1000),
    rackUnits: whole(0, 60),
    purchase,
  });

export const breakout = (id: string): fc.Arbitrary<Breakout> =>
  fc.record({
    id: fc.constant(id),
    name: label,
    ports: fc.oneof(whole(1, 16), whole(1, 1000)),
    trunkMbps: fc.oneof(fc.constant(10_000), number(1, 1e7)),
    powerW: number(0, 1e5),
    massKg: number(0, 1000),
    rackUnits: whole(0, 60),
    purchase,
  });

export const distro = (id: string): fc.Arbitrary<Distro> =>
  fc.record({
    id: fc.constant(id),
    name: label,
    circuits: fc.oneof(whole(1, 48), whole(1, 1000)),
    legA: number(1, 10_000),
    massKg: number(0, 5000),
    purchase,
  });

export const node = (id: string): fc.Arbitrary<Node> =>
  fc.record({
    id: fc.constant(id),
    name: label,
    outputs: whole(1, 64),
    canvasPixels: nullable(fc.oneof(whole(1, 1e8), whole(1, 1e10))),
    powerW: number(0, 1e5),
    massKg: number(0, 1000),
    rackUnits: whole(0, 60),
    purchase,
  });

export const cable = (id: string): fc.Arbitrary<Cable> =>
  fc.record({
    id: fc.constant(id),
    name: label,
    kind: fc.constantFrom('home-run', 'data-jumper', 'power-jumper', 'circuit', 'trunk', 'video'),
    massKg: number(0, 1000),
    price,
  });

export const catalogue: fc.Arbitrary<Catalogue> = fc.record({
  panels: listOf('panel', panel, 3),
  processors: listOf('processor', processor, 3),
  breakouts: listOf('breakout', breakout, 2),
  distros: listOf('distro', distro, 2),
  nodes: listOf('node', node, 2),
  cables: listOf('cable', cable, 4),
});
