import { expect, test } from 'vitest';
import { shortcutOf } from '../../../src/ui/bench/shortcut-of';

const key = (name: string, held: readonly ('ctrl' | 'meta' | 'shift' | 'alt')[] = []) => ({
  key: name,
  ctrlKey: held.includes('ctrl'),
  metaKey: held.includes('meta'),
  shiftKey: held.includes('shift'),
  altKey: held.includes('alt'),
});

test.each([
  [key('z', ['ctrl']), 'undo'],
  [key('z', ['meta']), 'undo'],
  [key('Z', ['ctrl', 'shift']), 'redo'],
  [key('y', ['ctrl']), 'redo'],
  [key('s', ['ctrl']), 'save'],
  [key('o', ['ctrl']), 'open'],
  [key('k', ['ctrl']), 'find'],
  [key('Escape'), 'leave'],
  [key('z'), null],
  [key('z', ['alt']), null],
  [key('z', ['ctrl', 'alt']), null],
  [key('s', ['ctrl', 'shift']), null],
  [key('x', ['ctrl']), null],
] as const)('shortcutOf %j is %s', (pressed, shortcut) => {
  expect(shortcutOf(pressed)).toBe(shortcut);
});
