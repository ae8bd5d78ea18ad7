import { z } from 'zod';
import { addresses } from './addresses';
import { alternative } from './alternative';
import { catalogue } from './catalogue';
import { ceiling } from './ceiling';
import { delay } from './delay';
import { feed } from './feed';
import { handChange } from './hand-change';
import { heldNames } from './held-names';
import { materials } from './materials';
import { picture } from './picture';
import { power } from './power';
import { label, longText, shortLabel } from './primitives';
import { existingWiring, signal } from './signal';
import { heat, masses } from './site';
import { sync } from './sync';
import { uniqueList } from './unique-list';
import { wall } from './wall';
import { wish } from './wish';

/** Everything that is planned: what an issued revision keeps, and what is restored from it. */
export const planContent = z.strictObject({
  name: label,
  revision: shortLabel,
  note: longText,
  /** How lengths are shown; the document itself is metric. */
  lengths: z.enum(['metric', 'feet']),
  currency: z.string().regex(/^[A-Z]{3}$/, 'a currency has three capital letters'),
  wish,
  catalogue,
  walls: z.array(wall).max(20),
  ceilings: z.array(ceiling).max(20),
  picture,
  signal,
  feed,
  delay,
  sync,
  addresses,
  existingWiring: existingWiring.nullable(),
  handChanges: uniqueList(handChange, 20_000),
  power,
  heat,
  masses,
  materials,
  alternatives: uniqueList(alternative, 50),
  /** Names in force since a revision was issued; null: nothing was issued yet, names follow from the plan alone. */
  names: heldNames.nullable(),
});
export type PlanContent = z.infer<typeof planContent>;
