import { z } from 'zod';
import { addresses } from './addresses';
import { alternative } from './alternative';
import { catalogue } from './catalogue';
import { ceiling } from './ceiling';
import { delay } from './delay';
import { feed } from './feed';
import { findTwinSurface } from './find-twin-surface';
import { handChange } from './hand-change';
import { materials } from './materials';
import { picture } from './picture';
import { power } from './power';
import { id, label, longText, shortLabel } from './primitives';
import { existingWiring, signal } from './signal';
import { heat, masses } from './site';
import { sync } from './sync';
import { uniqueList } from './unique-list';
import { wall } from './wall';
import { wish } from './wish';

export const planFormat = 'voussoir-plan';
export const planVersion = 2;

/** The whole document. Unknown keys are errors; a dangling id is not: the evaluation reports it as a check. */
export const plan = z
  .strictObject({
    format: z.literal(planFormat),
    version: z.literal(planVersion),
    id,
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
  })
  .superRefine((document, context) => {
    const twin = findTwinSurface(document);
    if (twin !== undefined) context.addIssue({ code: 'custom', path: twin.path, message: twin.reason });
  });
export type Plan = z.infer<typeof plan>;
