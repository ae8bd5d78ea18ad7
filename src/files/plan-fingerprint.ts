import type { Plan } from '../plan/plan';
import { planContent } from '../plan/plan-content';
import { planContentOf } from '../plan/plan-content-of';
import { sha256 } from './sha-256';

/**
 * First eight digits of the SHA-256 of what is planned, keys in the schema's order: sheets that show the same are of the
 * same plan, whoever keeps it and whatever was issued or ticked since.
 */
export function planFingerprint(plan: Plan): string {
  const text = JSON.stringify(planContent.parse(planContentOf(plan)));
  return sha256(new TextEncoder().encode(text)).slice(0, 8);
}
