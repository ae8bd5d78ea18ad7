import { useMemo } from 'react';
import { counted } from '../../../units/counted';
import type { Selection } from '../../state/selection';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { useFormat } from '../../widgets/use-format';
import { darkIf } from './dark-if';

/** What goes dark when the cables and boxes beside what is picked fail. */
export function DarkIfList({ selection }: { readonly selection: Selection }) {
  const evaluation = useEvaluation((all) => all);
  const format = useFormat();
  const { seek } = useActions();
  const rows = useMemo(() => darkIf(evaluation, selection), [evaluation, selection]);
  if (rows.length === 0) return null;
  return (
    <section className="hand-part" aria-label="What goes dark">
      <h3>What goes dark when one of these fails</h3>
      <ul className="dark-if">
        {rows.map(({ name, panels, share, first, last }) => (
          <li key={name}>
            <button type="button" onClick={() => seek(name)}>
              <b>{name}</b>
              <span>
                {panels === 0 ? 'nothing' : `${counted(panels, 'panel')}, ${format(share, 'share')} of the stage`}
              </span>
              {first !== null && <small>{panels === 1 ? first : `${first} … ${last}`}</small>}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
