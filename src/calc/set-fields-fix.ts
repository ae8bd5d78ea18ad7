import type { Path } from '../plan/commands/path';
import type { Fix } from './chapter';

/** A fix that sets fields: `label` on its button, `undoLabel` in the history. */
export function setFieldsFix(
  label: string,
  undoLabel: string,
  fields: readonly { readonly path: Path; readonly value: unknown }[],
): Fix {
  return { label, command: { name: 'set-fields', args: { fields, label: undoLabel } } };
}
