import type { UncheckedRecord } from './migrations/migration';
import { migrations } from './migrations/migrations';

/** A document of an older version as one of the present version, step by step; `version` is a version that was released. */
export function migrate(document: UncheckedRecord, version: number): UncheckedRecord {
  return migrations.slice(version).reduce<UncheckedRecord>((older, { from, migrate: step }) => {
    return { ...step(older), version: from + 1 };
  }, document);
}
