import { ordinal } from '../../bench/panel-way';
import type { Selection } from '../../state/selection';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { chainInHand } from './chain-in-hand';

/** The panels before and after the picked one on its run, and the whole chain in the order of its cable. */
export function RunOrder({ selection }: { readonly selection: Selection }) {
  const evaluation = useEvaluation((all) => all);
  const { seek } = useActions();
  const chain = chainInHand(evaluation, selection);
  if (!chain) return null;
  const { title, panels, at } = chain;
  const beside = (place: number, words: string) => {
    const name = panels[place];
    return name === undefined ? (
      <span className="neighbour-none">{place < 0 ? 'the first' : 'the last'}</span>
    ) : (
      <button type="button" className="button" onClick={() => seek(name)}>
        <small>{words}</small> {name}
      </button>
    );
  };
  return (
    <section className="hand-part" aria-label="Along the cable">
      <h3>
        {title}, {panels.length} panels in order
      </h3>
      {at >= 0 && (
        <div className="neighbours">
          {beside(at - 1, 'before')}
          <b>{ordinal(at + 1)}</b>
          {beside(at + 1, 'after')}
        </div>
      )}
      <details open={at < 0}>
        <summary>Whole chain, first panel first</summary>
        <ol className="chain-order">
          {panels.map((name, place) => (
            <li key={name}>
              <button
                type="button"
                className="button"
                aria-current={place === at ? 'true' : undefined}
                onClick={() => seek(name)}
              >
                <small>{place + 1}</small> {name}
              </button>
            </li>
          ))}
        </ol>
      </details>
    </section>
  );
}
