import type { Migration } from './migration';

/** Version 2 knew neither issued revisions, with the names that they hold, nor a build log. */
export const fromVersion2: Migration = {
  from: 2,
  migrate: (content) => ({ names: null, ...content }),
  migrateRest: (document) => ({ revisions: [], log: { ticks: [] }, ...document }),
};
