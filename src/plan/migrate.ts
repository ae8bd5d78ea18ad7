import { isRecord } from './migrations/is-record';
import type { Migration, UncheckedRecord } from './migrations/migration';
import { migrations } from './migrations/migrations';

/** A document of an older version as one of the present version, step by step; `version` is a version that was released. */
export function migrate(document: UncheckedRecord, version: number): UncheckedRecord {
  return migrations.slice(version).reduce<UncheckedRecord>((older, step) => {
    const rest = step.migrateRest?.(older) ?? older;
    return { ...step.migrate(rest), ...revisionsOf(rest, step), version: step.from + 1 };
  }, document);
}

/** The revisions in a document, each with its content migrated; nothing where it has none. */
function revisionsOf({ revisions }: UncheckedRecord, { migrate: step }: Migration): UncheckedRecord {
  if (!Array.isArray(revisions)) return {};
  return {
    revisions: revisions.map((revision: unknown) =>
      isRecord(revision) && isRecord(revision.content) ? { ...revision, content: step(revision.content) } : revision,
    ),
  };
}
