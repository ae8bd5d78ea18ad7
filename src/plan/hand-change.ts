import { z } from 'zod';
import { anchor, id } from './primitives';

/** Ways of wiring a zone by a regular figure.
 *  columns: one column a run; folded: columns back and forth, as many as a port takes;
 *  split: above a row single columns up, below it folded; rows: rows back and forth; free: no regular figure, found by search. */
export const wayOfWiring = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('columns') }),
  z.strictObject({ kind: z.literal('folded'), wide: z.int().min(1).max(1000) }),
  z.strictObject({ kind: z.literal('split'), aboveRow: z.int().min(1).max(1000), wide: z.int().min(1).max(1000) }),
  z.strictObject({ kind: z.literal('rows') }),
  z.strictObject({ kind: z.literal('free') }),
]);
export type WayOfWiring = z.infer<typeof wayOfWiring>;

/** What a person decided by hand: intent, never a resolved run. What no longer applies rests in the file. */
export const handChange = z.discriminatedUnion('kind', [
  /** The run that holds this panel begins here. */
  z.strictObject({ kind: z.literal('entry'), id, at: anchor }),
  /** The run is cut between these two neighbours. */
  z.strictObject({ kind: z.literal('cut'), id, from: anchor, to: anchor }),
  /** The run goes from one panel to its neighbour. */
  z.strictObject({ kind: z.literal('join'), id, from: anchor, to: anchor }),
  /** The zone that holds this panel is wired in this way. */
  z.strictObject({ kind: z.literal('way'), id, at: anchor, way: wayOfWiring }),
]);
export type HandChange = z.infer<typeof handChange>;
