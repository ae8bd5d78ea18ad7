import { expect, test } from 'vitest';
import { fromVersion2 } from '../../../src/plan/migrations/from-version-2';

test('a plan of version 2 holds no names, has issued nothing and built nothing', () => {
  expect(fromVersion2.migrate({ name: 'x' })).toEqual({ name: 'x', names: null });
  expect(fromVersion2.migrateRest?.({ name: 'x' })).toEqual({ name: 'x', revisions: [], log: { ticks: [] } });
});
