import { describe, expect, it } from 'vitest';
import { parsePlan } from '../../../src/plan/parse-plan';
import { serialisePlan } from '../../../src/plan/serialise-plan';
import { findByPlanId } from '../../../src/ui/storage/find-by-plan-id';
import { somePlan } from '../state/fake-bench';
import { createMemoryShelf } from './memory-shelf';

const entry = (key: string, keptAtMs: number, planId = 'wanted') => ({
  key,
  name: key,
  revision: '',
  planId,
  keptAtMs,
});

async function found(...entries: readonly ReturnType<typeof entry>[]) {
  const shelf = createMemoryShelf();
  for (const one of entries) await shelf.write(one, 'never read');
  return findByPlanId(shelf, parsePlan, 'wanted');
}

describe('findByPlanId', () => {
  it('takes the newest own document before any copy', async () => {
    expect(await found(entry('shared-1', 9), entry('old', 1), entry('new', 2), entry('other', 8, 'other'))).toBe('new');
  });
  it('takes the newest copy where there is no own one', async () => {
    expect(await found(entry('shared-1', 1), entry('shared-2', 2))).toBe('shared-2');
  });
  it('finds nothing where nothing is kept, or other plans only', async () => {
    expect(await found()).toBeNull();
    expect(await found(entry('other', 8, 'other'))).toBeNull();
  });
  it('looks into what was kept before entries named their plan, and passes by what cannot be read', async () => {
    const shelf = createMemoryShelf();
    shelf.put('broken', '{', 3);
    shelf.put('kept', serialisePlan({ ...somePlan, id: 'wanted' }), 1);
    expect(await findByPlanId(shelf, parsePlan, 'wanted')).toBe('kept');
  });
});
