import { z } from 'zod';
import { id, label } from './primitives';
import { wall } from './wall';

/** A build kept beside the plan: another wall for the same wish, to be put in place of the one of the same id. */
export const alternative = z.strictObject({ id, name: label, wall });
