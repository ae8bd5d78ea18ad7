import { check } from './check';
import type { Command } from './command';
import { find } from './find';
import { helpOn } from './help';
import { materials } from './materials';
import { schema } from './schema';

const ofPlans: readonly Command[] = [check, find, materials, schema];

/** All commands, in the order in which help lists them. */
export const commands: readonly Command[] = [...ofPlans, helpOn(ofPlans)];
