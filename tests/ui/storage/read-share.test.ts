import { describe, expect, it } from 'vitest';
import { encodeShare } from '../../../src/files/share-link';
import { readShare } from '../../../src/ui/storage/read-share';
import { somePlan } from '../state/fake-bench';

const keyOf = async (plan: typeof somePlan) => {
  const read = await readShare(encodeShare(plan));
  return 'key' in read ? read.key : read.refused;
};

describe('readShare', () => {
  it('gives the plan, and one key for one content', async () => {
    expect(await readShare(encodeShare(somePlan))).toEqual({ plan: somePlan, key: await keyOf(somePlan) });
    expect(await keyOf(somePlan)).toMatch(/^shared-[0-9a-f]{32}$/);
    expect(await keyOf({ ...somePlan, name: 'Another' })).not.toBe(await keyOf(somePlan));
  });
  it('gives the reason where there is none', async () => {
    expect(await readShare('A')).toMatchObject({ refused: 'cut' });
  });
});
