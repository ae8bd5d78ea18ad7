import { z } from 'zod';
import { plan } from './plan';

/**
 * The JSON Schema (draft 2020-12) of a plan's file. It says less than the program checks: that ids are unique, that lengths
 * are whole micrometres and that texts have no control characters is checked when a file is opened.
 */
export function planJsonSchema(): Record<string, unknown> {
  return { title: 'Voussoir plan', ...z.toJSONSchema(plan) };
}
