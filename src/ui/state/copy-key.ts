const mark = 'shared-';

/** Key of the copy that a link opens: the same for the same content, so that opening a link twice gives one copy. */
export function copyKey(digest: string): string {
  return `${mark}${digest.slice(0, 32)}`;
}

/** Whether a document is a copy of what somebody shared: it is looked at and ticked, and planned by nobody. */
export function isCopyKey(key: string): boolean {
  return key.startsWith(mark);
}
