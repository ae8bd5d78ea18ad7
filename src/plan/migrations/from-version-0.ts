import { isRecord } from './is-record';
import type { Migration, UncheckedRecord } from './migration';

/**
 * Version 0 was a draft. It wrote frame rates as decimal numbers (23.976), called feet 'imperial', and had neither a wiring
 * that exists nor alternatives.
 */
export const fromVersion0: Migration = {
  from: 0,
  migrate: (document) => ({
    existingWiring: null,
    alternatives: [],
    ...document,
    ...(document.lengths === 'imperial' ? { lengths: 'feet' } : {}),
    ...(isRecord(document.picture) ? { picture: migratePicture(document.picture) } : {}),
  }),
};

function migratePicture(picture: UncheckedRecord): UncheckedRecord {
  return {
    ...picture,
    base: migrateMode(picture.base),
    bySurface: migrateModes(picture.bySurface),
    alsoServe: migrateModes(picture.alsoServe),
  };
}

function migrateModes(entries: unknown): unknown {
  if (!Array.isArray(entries)) return entries;
  return entries.map((entry: unknown) => (isRecord(entry) ? { ...entry, mode: migrateMode(entry.mode) } : entry));
}

function migrateMode(mode: unknown): unknown {
  return isRecord(mode) && typeof mode.rate === 'number' ? { ...mode, rate: exactRate(mode.rate) } : mode;
}

/** 23.976 is 24000 frames in 1001 seconds; a rate that is neither whole nor of that family keeps three decimals. */
function exactRate(rate: number): UncheckedRecord {
  const nominal = Math.round((rate * 1001) / 1000);
  if (Number.isInteger(rate)) return { frames: rate, seconds: 1 };
  if (Math.abs((nominal * 1000) / 1001 - rate) < 0.005) return { frames: nominal * 1000, seconds: 1001 };
  return { frames: Math.round(rate * 1000), seconds: 1000 };
}
