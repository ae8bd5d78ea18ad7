import type { UncheckedRecord } from './migration';

export function isRecord(value: unknown): value is UncheckedRecord {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
