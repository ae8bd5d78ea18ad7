import type { Path } from '../plan/commands/path';

/**
 * `root` with fields set, sharing what did not change. For trying a fix on part of a plan inside the evaluation, where
 * its path is known to be there; a person's change goes through the commands of the plan.
 */
export function setFieldsIn<Root>(
  root: Root,
  fields: readonly { readonly path: Path; readonly value: unknown }[],
): Root {
  return fields.reduce<unknown>((whole, { path, value }) => setIn(whole, path, value), root) as Root;
}

function setIn(whole: unknown, [key, ...rest]: Path, value: unknown): unknown {
  if (key === undefined) return value;
  const copy = (Array.isArray(whole) ? [...whole] : { ...(whole as object) }) as Record<string | number, unknown>;
  copy[key] = setIn(copy[key], rest, value);
  return copy;
}
