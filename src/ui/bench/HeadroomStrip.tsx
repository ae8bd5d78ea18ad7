import { useMemo, useState } from 'react';
import { selectRecomputing } from '../state/selectors';
import { useBench } from '../state/use-bench';
import { useEvaluation } from '../state/use-evaluation';
import { usePlan } from '../state/use-plan';
import { useDisplayOptions } from '../widgets/display-context';
import { StatusGlyph } from '../widgets/StatusGlyph';
import { findHeadroom, type HeadroomCell, worstCell } from './headroom';
import { usePageHref } from './use-page-href';

/** What is left of what matters. Folded, it shows its worst cell and unfolds on a press. */
export function HeadroomStrip({ folds }: { readonly folds: boolean }) {
  const evaluation = useEvaluation((all) => all);
  const plan = usePlan((all) => all);
  const recomputing = useBench(selectRecomputing);
  const options = useDisplayOptions();
  const [open, setOpen] = useState(false);
  const cells = useMemo(() => findHeadroom(plan, evaluation, options), [plan, evaluation, options]);
  const worst = worstCell(cells);
  const shown = folds && !open && worst ? [worst] : cells;
  return (
    <section className="strip" aria-label="What is left" aria-busy={recomputing} data-folds={folds ? '' : undefined}>
      <ul>
        {shown.map((cell) => (
          <Cell key={cell.key} cell={cell} />
        ))}
      </ul>
      {folds && (
        <button type="button" className="button plain" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? 'Fold' : `All ${cells.length}`}
        </button>
      )}
      {recomputing && <span className="recomputing">recomputing</span>}
    </section>
  );
}

function Cell({ cell }: { readonly cell: HeadroomCell }) {
  const href = usePageHref()(cell.page);
  const marked = cell.status === 'watch' || cell.status === 'stop';
  return (
    <li>
      <a className="cell" href={href} data-status={cell.status}>
        <span className="cell-title">
          {cell.title}
          {marked && <StatusGlyph status={cell.status} />}
        </span>
        <b>{cell.left}</b>
        <span className="cell-detail">{cell.detail}</span>
      </a>
    </li>
  );
}
