import { type Plan, plan as planSchema } from './plan';

/**
 * The text of a plan's file: keys in the schema's order, two spaces, a line feed at the end, so that the same plan is the
 * same text to the byte. Throws for what is no valid plan: a command never makes one.
 */
export function serialisePlan(plan: Plan): string {
  return `${JSON.stringify(planSchema.parse(plan), null, 2)}\n`;
}
