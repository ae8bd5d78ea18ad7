import { useEffect } from 'react';
import { useBenchStore } from '../state/use-bench';
import { shortcutOf } from './shortcut-of';
import { useBenchCommands } from './use-bench-commands';

/** True where the key belongs to what is being typed: a field that was not committed, or one that commits nothing. */
function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) {
    if (target.type === 'checkbox' || target.type === 'radio' || target.type === 'range') return false;
    return target.dataset.draft === undefined || target.dataset.draft === 'typed';
  }
  return target instanceof HTMLElement && target.isContentEditable;
}

/** Keys that act on the plan as a whole, wherever the focus is. */
export function useShortcuts(onFind: () => void): void {
  const commands = useBenchCommands();
  const { store, actions } = useBenchStore();

  useEffect(() => {
    function onKeyDown(event: KeyboardEvent): void {
      if (event.defaultPrevented) return;
      const shortcut = shortcutOf(event);
      if (shortcut === 'leave') {
        if (store.getState().preview) actions.endPreview();
        return;
      }
      if (shortcut === null || ((shortcut === 'undo' || shortcut === 'redo') && isTyping(event.target))) return;
      event.preventDefault();
      if (shortcut === 'undo') commands.undo();
      if (shortcut === 'redo') commands.redo();
      if (shortcut === 'save') void commands.save();
      if (shortcut === 'open') void commands.openFile();
      if (shortcut === 'find') onFind();
    }
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [commands, store, actions, onFind]);
}
