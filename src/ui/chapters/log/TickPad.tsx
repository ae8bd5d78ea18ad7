import { useState } from 'react';
import type { ThingState } from '../../../calc/log/log-state';
import { isDone } from '../../../calc/log/log-state';
import { nextTick } from '../../../calc/log/next-tick';
import { type BuildStep, buildStep, type TickedKind } from '../../../plan/build-log';
import { useSay } from '../../bench/notice-context';
import { useActions, useBench } from '../../state/use-bench';
import { useDesk, useDeskActions } from '../../storage/use-desk';
import { SegmentChoice } from '../../widgets/SegmentChoice';
import { NeighbourButtons } from './NeighbourButtons';
import { kindWords, stepWords } from './step-words';
import { TickMark } from './TickMark';
import type { ThingsInHand } from './things-in-hand';
import { useMoment } from './use-moment';
import { WhoDialog } from './WhoDialog';

const kinds: readonly TickedKind[] = ['column', 'port', 'circuit'];

/** The four steps of the thing in hand as large buttons, and the things beside it, so that one walks along the wall ticking. */
export function TickPad({ things }: { readonly things: ThingsInHand }) {
  const [chosen, setChosen] = useState<TickedKind>('column');
  const present = kinds.filter((kind) => things[kind] !== undefined);
  const kind = present.includes(chosen) ? chosen : present[0];
  const thing = kind && things[kind];
  if (!thing) return null;
  return (
    <section className="tick-pad" aria-label="Ticks">
      {present.length > 1 && (
        <SegmentChoice
          label="What is ticked"
          value={thing.of}
          choices={present.map((value) => ({ value, label: `${kindWords[value]} ${things[value]?.name}` }))}
          onChoose={setChosen}
        />
      )}
      <NeighbourButtons thing={thing} />
      <TickButtons thing={thing} />
    </section>
  );
}

function TickButtons({ thing }: { readonly thing: ThingState }) {
  const who = useDesk((state) => state.memory.who);
  const { remember } = useDeskActions();
  const { dispatch } = useActions();
  const say = useSay();
  const moment = useMoment();
  const follows = useBench((state) => state.follows);
  const [asks, setAsks] = useState<BuildStep | null>(null);

  function put(step: BuildStep, name: string): void {
    const tick = nextTick(thing, step, name, Date.now());
    const outcome = dispatch({ name: 'put-ticks', args: { ticks: [tick] } });
    if ('refused' in outcome) say(outcome.refused);
  }

  return (
    <fieldset className="ticks" aria-label={`${kindWords[thing.of]} ${thing.name}`}>
      {buildStep.options.map((step) => {
        const last = thing.steps[step];
        const done = isDone(thing, step);
        return (
          <button
            key={step}
            type="button"
            className="tick"
            aria-pressed={done}
            disabled={follows}
            onClick={() => (who === '' ? setAsks(step) : put(step, who))}
          >
            <TickMark done={done} />
            <b>{stepWords[step]}</b>
            <small>{last ? `${done ? '' : 'taken back, '}${last.who}, ${moment(last.atMs)}` : 'not yet'}</small>
          </button>
        );
      })}
      {asks !== null && (
        <WhoDialog
          onClose={() => setAsks(null)}
          onName={(name) => {
            remember({ who: name });
            setAsks(null);
            put(asks, name);
          }}
        />
      )}
    </fieldset>
  );
}
