import { z } from 'zod';
import { amount, id, label } from './primitives';

/** Kinds of cable that materials count from the wiring and the circuits. */
export const cableKind = z.enum(['home-run', 'data-jumper', 'power-jumper', 'circuit', 'trunk', 'video']);
export type CableKind = z.infer<typeof cableKind>;

/** A cable of the catalogue, by kind: the first of a kind is the one counted. */
export const cable = z.strictObject({
  id,
  name: label,
  kind: cableKind,
  massKg: z.number().min(0).max(1000),
  price: amount.nullable(),
});
export type Cable = z.infer<typeof cable>;
