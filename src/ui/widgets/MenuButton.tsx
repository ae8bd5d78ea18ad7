import { type KeyboardEvent, lazy, Suspense, useRef, useState } from 'react';

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
  readonly entries: readonly MenuEntry[];
  readonly className?: string;
  readonly onOpen?: () => void;
}

const loadMenu = () => import('./MenuPopover');
const MenuPopover = lazy(async () => ({ default: (await loadMenu()).MenuPopover }));

/** A button that opens a menu. The menu itself is loaded when somebody comes near it, so that the first page need not wait. */
export function MenuButton({ label, entries, className = 'button', onOpen }: MenuButtonProps) {
  const button = useRef<HTMLButtonElement>(null);
  const [isOpen, setIsOpen] = useState(false);
  const open = () => {
    setIsOpen(true);
    onOpen?.();
  };
  const comeNear = () => void loadMenu().catch(() => undefined);

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
    event.preventDefault();
    open();
  }

  return (
    <>
      <button
        ref={button}
        type="button"
        className={className}
        aria-haspopup="menu"
        aria-expanded={isOpen}
        onPointerEnter={comeNear}
        onFocus={comeNear}
        onKeyDown={onKeyDown}
        onClick={open}
      >
        {label}
        <svg className="glyph" viewBox="0 0 14 14" aria-hidden="true">
          <path d="M3.5 5.5 7 9l3.5-3.5" />
        </svg>
      </button>
      {isOpen && (
        <Suspense fallback={null}>
          <MenuPopover label={label} entries={entries} button={button} onClose={() => setIsOpen(false)} />
        </Suspense>
      )}
    </>
  );
}
