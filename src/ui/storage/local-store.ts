/** The browser's small store; null where it is switched off. */
export function findLocalStore(): Storage | null {
  try {
    return globalThis.localStorage ?? null;
  } catch {
    return null;
  }
}
