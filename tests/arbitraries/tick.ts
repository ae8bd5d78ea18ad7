import fc from 'fast-check';
import { buildStep, type Tick } from '../../src/plan/build-log';
import type { TickList } from '../../src/plan/tick-list';

const names = { column: ['A C1', 'A C2', 'C3'], port: ['1A-01', '1A-02'], circuit: ['D1-1', 'D1-2'] } as const;

/** A tick of few things by few people at few moments, so that two of a list often concern the same or happen at once. */
export const tick: fc.Arbitrary<Tick> = fc
  .constantFrom('column' as const, 'port' as const, 'circuit' as const)
  .chain((of) =>
    fc.record({
      step: fc.constantFrom(...buildStep.options),
      of: fc.constant(of),
      name: fc.constantFrom(...names[of]),
      done: fc.boolean(),
      who: fc.constantFrom('', 'Ada', 'Bo', 'Çelik'),
      atMs: fc.constantFrom(0, 1, 2, 1_764_000_000_000),
    }),
  );

export const ticks: fc.Arbitrary<readonly Tick[]> = fc.array(tick, { maxLength: 30 });

/** What a device sends, for one of two plans. */
export const tickList: fc.Arbitrary<TickList> = fc
  .record({ planId: fc.constantFrom('plan-1', 'plan-2'), planName: fc.constantFrom('', 'Stage', 'Bühne "2"'), ticks })
  .map(({ ticks: some, ...plan }) => ({ format: 'voussoir-ticks', version: 1, ...plan, ticks: [...some] }));
