import type { ReactNode } from 'react';

/** Content of a cell; a figure may break before what stands in brackets and nowhere else: '8352 kg (18 413 lb)'. */
export function FoldingFigure({ children }: { readonly children: ReactNode }) {
  if (typeof children !== 'string' || !/ \(.+\)$/.test(children)) return children;
  return <span className="folds">{children.replace(/ (?!\()/g, '\u00a0')}</span>;
}
