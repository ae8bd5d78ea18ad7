import { fromVersion0 } from './from-version-0';
import { fromVersion1 } from './from-version-1';
import { fromVersion2 } from './from-version-2';
import type { Migration } from './migration';

/** Every step there has been, in order: the place in the list is the version it starts from. Only ever added to. */
export const migrations: readonly Migration[] = [fromVersion0, fromVersion1, fromVersion2];
