import type { RefObject } from 'react';
import { Menu, MenuItem, Popover } from 'react-aria-components';
import type { MenuEntry } from './MenuButton';

export interface MenuPopoverProps {
  readonly label: string;
  readonly entries: readonly MenuEntry[];
  /** The button that the menu hangs on; it has the focus again when the menu goes. */
  readonly button: RefObject<HTMLButtonElement | null>;
  readonly onClose: () => void;
}

/** An open menu: arrow keys and letters move, Escape and a press elsewhere close it. */
export function MenuPopover({ label, entries, button, onClose }: MenuPopoverProps) {
  return (
    <Popover
      isOpen
      className="menu-popover"
      placement="bottom start"
      triggerRef={button}
      aria-label={label}
      onOpenChange={(open) => !open && onClose()}
    >
      <Menu
        className="menu"
        aria-label={label}
        autoFocus="first"
        onClose={onClose}
        onAction={(id) => entries.find((entry) => entry.id === id)?.onChoose()}
      >
        {entries.map((entry) => (
          <MenuItem
            key={entry.id}
            id={entry.id}
            className="menu-item"
            textValue={entry.label}
            isDisabled={entry.isDisabled ?? false}
          >
            <span>{entry.label}</span>
            {entry.note && <small>{entry.note}</small>}
          </MenuItem>
        ))}
      </Menu>
    </Popover>
  );
}
