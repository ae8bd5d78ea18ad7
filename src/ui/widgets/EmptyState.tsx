import type { ReactNode } from 'react';

/** Where nothing is yet: why, and what to do about it. */
export function EmptyState({ title, children }: { readonly title: string; readonly children?: ReactNode }) {
  return (
    <div className="empty">
      <strong>{title}</strong>
      {children}
    </div>
  );
}
