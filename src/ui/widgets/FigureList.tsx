import type { ReactNode } from 'react';

export interface NamedFigure {
  readonly name: string;
  readonly value: ReactNode;
}

/** Headline figures, name and value. */
export function FigureList({ figures }: { readonly figures: readonly NamedFigure[] }) {
  return (
    <dl className="figure-list">
      {figures.map(({ name, value }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
