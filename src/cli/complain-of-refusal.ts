import type { ParsedPlan } from '../plan/parse-plan';
import type { Terminal } from './terminal';

/** Says on standard error why a file gives no plan: in a sentence, and as reason and path for a program that reads it. */
export function complainOfRefusal(
  file: string,
  refusal: Exclude<ParsedPlan, { plan: unknown }>,
  terminal: Terminal,
): void {
  const path = refusal.path === undefined ? '' : `path: ${refusal.path}\n`;
  terminal.complain(`voussoir: ${file}: ${refusal.sentence}\nreason: ${refusal.refused}\n${path}`);
}
