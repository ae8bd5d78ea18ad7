/**
 * The same value with 0 in place of every -0, which a file cannot hold. Whatever has none keeps its identity;
 * parts that `previous` has already are not looked at again.
 */
export function withoutNegativeZero<T>(value: T, previous?: unknown): T {
  if (Object.is(value, -0)) return 0 as T;
  if (typeof value !== 'object' || value === null || value === previous) return value;
  let copy: Record<string, unknown> | undefined;
  for (const [key, part] of Object.entries(value)) {
    const clean = withoutNegativeZero(part, (previous as Record<string, unknown> | null | undefined)?.[key]);
    if (Object.is(clean, part)) continue;
    copy ??= (Array.isArray(value) ? [...value] : { ...value }) as Record<string, unknown>;
    copy[key] = clean;
  }
  return (copy ?? value) as T;
}
