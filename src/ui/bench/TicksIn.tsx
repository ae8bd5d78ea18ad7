import { useCallback, useEffect } from 'react';
import { mergeTicks } from '../../plan/merge-ticks';
import type { TickList } from '../../plan/tick-list';
import { useActions, useBench, useBenchStore } from '../state/use-bench';
import { useDesk, useDeskActions } from '../storage/use-desk';
import { Button } from '../widgets/Button';
import { Dialog } from '../widgets/Dialog';
import { useSay } from './notice-context';
import { wordsOfTicksIn } from './words-of-ticks-in';

/** Takes ticks that a file or a link brought into the plan on the bench; asks first where they belong to another one. */
export function TicksIn() {
  const list = useDesk((state) => state.ticks);
  const planId = useBench((state) => state.plan.id);
  const planName = useBench((state) => state.plan.name);
  const { dropTicks } = useDeskActions();
  const take = useTakeTicks();
  const isOwn = list?.planId === planId;

  useEffect(() => {
    if (list && isOwn) take(list);
  }, [list, isOwn, take]);

  if (!list || isOwn) return null;
  return (
    <Dialog
      title="Ticks of another plan"
      isOpen
      onClose={dropTicks}
      actions={
        <>
          <Button onClick={dropTicks}>Leave them</Button>
          <Button look="primary" onClick={() => take(list)}>
            Take them in here
          </Button>
        </>
      }
    >
      <p>
        {list.ticks.length === 1 ? 'This tick was' : `These ${list.ticks.length} ticks were`} made for{' '}
        <b>{list.planName || 'a plan without a name'}</b>, which this browser does not keep. On the bench is{' '}
        <b>{planName || 'a plan without a name'}</b>.
      </p>
      <p className="quiet">
        Names that this plan does not have rest in its log, and nothing is lost. One step of undo takes all of them out
        again.
      </p>
    </Dialog>
  );
}

function useTakeTicks(): (list: TickList) => void {
  const { store } = useBenchStore();
  const { dispatch, goTo } = useActions();
  const { dropTicks } = useDeskActions();
  const say = useSay();
  return useCallback(
    ({ ticks }) => {
      const before = store.getState().plan.log.ticks;
      const outcome = dispatch({ name: 'put-ticks', args: { ticks } }, { place: { page: 'log', field: null } });
      const news = mergeTicks(before, ticks).length - before.length;
      say('refused' in outcome ? outcome.refused : wordsOfTicksIn(ticks.length, news));
      dropTicks();
      goTo('log');
    },
    [store, dispatch, goTo, dropTicks, say],
  );
}
