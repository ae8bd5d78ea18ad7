export type Shortcut = 'undo' | 'redo' | 'save' | 'open' | 'find' | 'leave';

type Key = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>;

/** What a key asks for; null where it asks for nothing. By the letter on the key, so that every layout works. */
export function shortcutOf({ key, ctrlKey, metaKey, shiftKey, altKey }: Key): Shortcut | null {
  if (key === 'Escape') return 'leave';
  if (altKey || ctrlKey === metaKey) return null;
  switch (key.toLowerCase()) {
    case 'z':
      return shiftKey ? 'redo' : 'undo';
    case 'y':
      return shiftKey ? null : 'redo';
    case 's':
      return shiftKey ? null : 'save';
    case 'o':
      return shiftKey ? null : 'open';
    case 'k':
      return shiftKey ? null : 'find';
    default:
      return null;
  }
}
