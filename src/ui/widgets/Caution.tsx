import type { ReactNode } from 'react';

/** The caution that stands wherever a plan's figures touch what can hurt someone. */
export function Caution({ children }: { readonly children: ReactNode }) {
  return (
    <aside className="caution" aria-label="Caution">
      <svg className="glyph" viewBox="0 0 14 14" aria-hidden>
        <path d="M7 1.5 13 12.5H1ZM7 5.5v3M7 10.6v.2" />
      </svg>
      <div>{children}</div>
    </aside>
  );
}
