import { Menu, MenuItem, MenuTrigger, Popover, Button as PressButton } from 'react-aria-components';

export interface MenuEntry {
  readonly id: string;
  readonly label: string;
  /** Quiet words at the end: a date, a shortcut. */
  readonly note?: string;
  readonly isDisabled?: boolean;
  readonly onChoose: () => void;
}

export interface MenuButtonProps {
  readonly label: string;
  /** Said instead of the label where the label alone says too little. */
  readonly said?: string;
  readonly entries: readonly MenuEntry[];
  readonly className?: string;
  readonly onOpen?: () => void;
}

/** A button that opens a menu. */
export function MenuButton({ label, said, entries, className = 'button', onOpen }: MenuButtonProps) {
  const names = said === undefined ? {} : { 'aria-label': said };
  return (
    <MenuTrigger onOpenChange={(open) => open && onOpen?.()}>
      <PressButton className={className} {...names}>
        {label}
        <svg className="glyph" viewBox="0 0 14 14" aria-hidden="true">
          <path d="M3.5 5.5 7 9l3.5-3.5" />
        </svg>
      </PressButton>
      <Popover className="menu-popover" placement="bottom start">
        <Menu className="menu" onAction={(id) => entries.find((entry) => entry.id === id)?.onChoose()}>
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
    </MenuTrigger>
  );
}
