/**
 * What turns one plan into the next, as plain data small enough to post to a worker. Parts that both plans share by
 * reference are named, not copied, so that the worker's own plan keeps their identity and with it its memos.
 */
export type PlanPatch =
  | { readonly kind: 'same' }
  | { readonly kind: 'value'; readonly value: unknown }
  | { readonly kind: 'fields'; readonly fields: Readonly<Record<string, PlanPatch>> }
  | { readonly kind: 'items'; readonly items: readonly ItemPatch[] };

/** One element of the next array: element `from` of the old one, changed by `patch`; or a new value. */
type ItemPatch = { readonly from: number; readonly patch: PlanPatch } | { readonly value: unknown };

type Fields = Readonly<Record<string, unknown>>;

const same: PlanPatch = { kind: 'same' };

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function diffFields(before: Fields, after: Fields): PlanPatch {
  const keys = Object.keys(after);
  const alike = keys.length === Object.keys(before).length && keys.every((key) => Object.hasOwn(before, key));
  if (!alike) return { kind: 'value', value: after };
  const fields: Record<string, PlanPatch> = {};
  for (const key of keys) {
    if (!Object.is(before[key], after[key])) fields[key] = diffPlan(before[key], after[key]);
  }
  return { kind: 'fields', fields };
}

function diffItems(before: readonly unknown[], after: readonly unknown[]): PlanPatch {
  const placeOf = new Map<unknown, number>();
  before.forEach((item, index) => {
    if (typeof item === 'object' && item !== null) placeOf.set(item, index);
  });
  const items = after.map((item, index): ItemPatch => {
    const kept = placeOf.get(item);
    if (kept !== undefined) return { from: kept, patch: same };
    if (index < before.length && typeof item === 'object') return { from: index, patch: diffPlan(before[index], item) };
    return { value: item };
  });
  return { kind: 'items', items };
}

/** The patch that makes `after` out of `before`; both are plain data. */
export function diffPlan(before: unknown, after: unknown): PlanPatch {
  if (Object.is(before, after)) return same;
  if (Array.isArray(before) && Array.isArray(after)) return diffItems(before, after);
  if (isFields(before) && isFields(after)) return diffFields(before, after);
  return { kind: 'value', value: after };
}

/** Applies a patch; what it does not name keeps its identity. */
export function applyPatch<T>(before: T, patch: PlanPatch): T;
export function applyPatch(before: unknown, patch: PlanPatch): unknown {
  switch (patch.kind) {
    case 'same':
      return before;
    case 'value':
      return patch.value;
    case 'fields': {
      const next: Record<string, unknown> = { ...(before as Fields) };
      for (const [key, inner] of Object.entries(patch.fields)) next[key] = applyPatch(next[key], inner);
      return next;
    }
    case 'items': {
      const old = before as readonly unknown[];
      return patch.items.map((item) => ('from' in item ? applyPatch(old[item.from], item.patch) : item.value));
    }
  }
}
