import { check } from './check';
import type { Command } from './command';
import { compare } from './compare';
import { drawings } from './drawings';
import { find } from './find';
import { helpOn } from './help';
import { labels } from './labels';
import { materials } from './materials';
import { mesh } from './mesh';
import { pictures } from './pictures';
import { pixelmap } from './pixelmap';
import { schedules } from './schedules';
import { schema } from './schema';
import { sheets } from './sheets';

const ofPlans: readonly Command[] = [
  check,
  compare,
  find,
  materials,
  schedules,
  pictures,
  pixelmap,
  mesh,
  drawings,
  sheets,
  labels,
  schema,
];

/** All commands, in the order in which help lists them. */
export const commands: readonly Command[] = [...ofPlans, helpOn(ofPlans)];
