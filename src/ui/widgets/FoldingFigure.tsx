/** A figure that may break before what stands in brackets and nowhere else: '8352 kg (18 413 lb)'. */
export function FoldingFigure({ text }: { readonly text: string }) {
  return <span className="folds">{text.replace(/ (?!\()/g, '\u00a0')}</span>;
}
