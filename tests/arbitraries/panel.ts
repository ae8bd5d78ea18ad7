import fc from 'fast-check';
import type { Panel } from '../../src/plan/panel';
import { amountArbitrary, idArbitrary, jointArbitrary, sizeArbitrary } from './primitives';

const orNull = <Value>(arbitrary: fc.Arbitrary<Value>) => fc.option(arbitrary, { nil: null });
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const whole = (min: number, max: number) => fc.integer({ min, max });

/** Any panel that the schema accepts, with a leaning towards sizes and pitches that are built. */
export function panelArbitrary(id: fc.Arbitrary<string> = idArbitrary): fc.Arbitrary<Panel> {
  return fc.record({
    id,
    name: fc.string({ maxLength: 20 }),
    size: fc.record({
      widthMm: sizeArbitrary,
      heightMm: sizeArbitrary,
      depthMm: fc.oneof(fc.constantFrom(70, 80, 100), sizeArbitrary),
      bevelled: fc.boolean(),
    }),
    pixels: fc.record({
      wide: fc.oneof(fc.constantFrom(84, 128, 176, 192, 216, 256, 320), whole(1, 8192)),
      high: fc.oneof(fc.constantFrom(84, 128, 176, 192, 216, 256, 320), whole(1, 8192)),
    }),
    massKg: between(0, 1000),
    lock: fc.record({
      stepsDeg: fc.oneof(
        fc.constant<number[]>([-5, -2.5, 0, 2.5, 5, 7.5, 10]),
        fc.array(jointArbitrary, { maxLength: 8 }),
      ),
      highestStackMm: orNull(sizeArbitrary),
      longestHangMm: orNull(sizeArbitrary),
    }),
    light: fc.record({
      refreshHz: orNull(between(1, 1e6)),
      refreshMode: fc.constantFrom('locked' as const, 'fixed' as const),
      peakNits: orNull(between(0, 1e6)),
    }),
    data: fc.record({
      chainPanels: orNull(whole(1, 10_000)),
      passesUnpowered: fc.boolean(),
      drivenBy: fc.uniqueArray(fc.record({ processorId: idArbitrary, portPixels: orNull(whole(1, 1e8)) }), {
        maxLength: 3,
        selector: (pair) => pair.processorId,
      }),
    }),
    power: fc.record({
      blackW: between(0, 1e5),
      typicalW: between(0, 1e5),
      fullWhiteW: between(0, 1e5),
      powerFactor: between(0.1, 1),
      lowestV: between(1, 1000),
      highestV: between(1, 1000),
      chainA: orNull(between(0.1, 1000)),
      leakageMa: orNull(between(0, 1000)),
      inrushA: orNull(between(0, 10_000)),
    }),
    purchase: fc.record({
      price: orNull(amountArbitrary),
      perCase: whole(1, 1000),
      caseMassKg: between(0, 1000),
      leadDays: orNull(whole(0, 1000)),
    }),
  });
}
