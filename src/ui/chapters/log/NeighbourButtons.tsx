import type { BuiltThing } from '../../../calc/log/built-thing';
import { useActions, useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { useLog } from '../../state/use-log';
import { neighbourThings } from './neighbour-things';
import { kindWords } from './step-words';

/** The name of the thing in hand between the names of those on its left and right. */
export function NeighbourButtons({ thing }: { readonly thing: BuiltThing }) {
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const from = useBench((state) => state.drawing.from);
  const state = useLog();
  const { left, right } = neighbourThings(surfaces, state, thing, from);
  return (
    <div className="neighbours">
      <GoTo thing={left} side="left" />
      <b>
        {kindWords[thing.of]} {thing.name}
      </b>
      <GoTo thing={right} side="right" />
    </div>
  );
}

function GoTo({ thing, side }: { readonly thing: BuiltThing | null; readonly side: 'left' | 'right' }) {
  const { seek } = useActions();
  if (!thing) return <span className="neighbour-none">end</span>;
  return (
    <button
      type="button"
      className="button"
      onClick={() => seek(thing.of === 'port' ? `port ${thing.name}` : thing.name)}
    >
      {side === 'left' && <span aria-hidden="true">‹ </span>}
      {thing.name}
      {side === 'right' && <span aria-hidden="true"> ›</span>}
    </button>
  );
}
