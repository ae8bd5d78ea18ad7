import { z } from 'zod';
import { anchor } from './primitives';

/** A name as it stands on a cable: '3B-04', 'D4-11'. */
const name = z
  .string()
  .min(1)
  .max(24)
  .regex(/^[A-Z0-9-]+$/, 'a name of a port or a circuit has capital letters, digits and hyphens');

/** A chain of panels under its name: where it begins and where it ends when the name was given. */
export const heldChain = z.strictObject({ name, first: anchor, last: anchor });
export type HeldChain = z.infer<typeof heldChain>;

/** A processor's number and a panel that it drove when the number was given: the lower left one of its zone. */
const heldProcessor = z.strictObject({ number: z.int().min(1).max(10_000), at: anchor });

/**
 * Names that an issued revision put on paper and on cables. They stay with their panels whatever is added or taken away
 * beside them; nobody else gets them.
 */
export const heldNames = z.strictObject({
  processors: z.array(heldProcessor).max(10_000),
  ports: z.array(heldChain).max(250_000),
  circuits: z.array(heldChain).max(250_000),
});
export type HeldNames = z.infer<typeof heldNames>;
