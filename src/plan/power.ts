import { z } from 'zod';
import { id, label, share } from './primitives';
import { uniqueList } from './unique-list';

/** The supply, how panels sit on it, and what feeds the distros. */
export const power = z.strictObject({
  supply: z.strictObject({
    /** wye: three legs about a neutral; split-phase: two legs about a neutral. */
    kind: z.enum(['wye', 'split-phase']),
    /** Nominal volts from leg to neutral. */
    legToNeutralV: z.number().min(50).max(1000),
    /** Lowest voltage of the supply's range as a share of nominal; circuits are sized there. */
    lowestShare: z.number().min(0.5).max(1),
  }),
  connection: z.enum(['leg-to-neutral', 'leg-to-leg']),
  circuit: z.strictObject({
    ratedA: z.number().min(1).max(1000),
    /** Share of a rating usable for a load that lasts. */
    usableShare: z.number().min(0.1).max(1),
  }),
  distroId: id.nullable(),
  /** Service points with amperes a leg. */
  servicePoints: uniqueList(z.strictObject({ id, name: label, legA: z.number().min(1).max(100_000) }), 50),
  /** Average picture level for the "typical" figure, 0 black to 1 full white. */
  typicalLevel: share,
  /** Brightness the panels are set to, of their peak. */
  brightnessShare: share,
  /** Processors, breakouts and nodes are fed from the same service. */
  includesSignal: z.boolean(),
});
export type Power = z.infer<typeof power>;

/** A fifth of full white on average, at full brightness: common practice, no source, from memory. */
const sharedDefaults = {
  distroId: null,
  servicePoints: [],
  typicalLevel: 0.2,
  brightnessShare: 1,
  includesSignal: true,
};

/**
 * 230/400 V, panels between leg and neutral, circuits of 16 A. Share of 0.8: common practice, no source. Ten per cent below
 * nominal: the range of EN 50160, from memory.
 */
export const defaultPower230: Power = {
  supply: { kind: 'wye', legToNeutralV: 230, lowestShare: 0.9 },
  connection: 'leg-to-neutral',
  circuit: { ratedA: 16, usableShare: 0.8 },
  ...sharedDefaults,
};

/**
 * 120/208 V, panels between two legs, circuits of 20 A. Share of 0.8: NEC 210.20(A). Five per cent below nominal: range A of
 * ANSI C84.1, from memory.
 */
export const defaultPower120: Power = {
  supply: { kind: 'wye', legToNeutralV: 120, lowestShare: 0.95 },
  connection: 'leg-to-leg',
  circuit: { ratedA: 20, usableShare: 0.8 },
  ...sharedDefaults,
};
