import { useMemo } from 'react';
import { scheduleAddresses } from '../../../sheets/schedule-addresses';
import { scheduleNodes } from '../../../sheets/schedule-nodes';
import { scheduleNodesDelay } from '../../../sheets/schedule-nodes-delay';
import { scheduleSync } from '../../../sheets/schedule-sync';
import { counted } from '../../../units/counted';
import { ChapterPage } from '../../bench/ChapterPage';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { EmptyState } from '../../widgets/EmptyState';
import { NodesGiven } from './NodesGiven';
import { NodesResult } from './NodesResult';

/** Which node feeds which processors, the canvas that it sends, the delay, and what keeps all in step. */
export function NodesPage() {
  const { nodes, spareNodes } = useEvaluation((evaluation) => evaluation.nodes.results);
  return (
    <ChapterPage
      page="nodes"
      given={<NodesGiven />}
      resultNote={`${counted(nodes.length, 'node')}, ${spareNodes} spare`}
      result={nodes.length === 0 ? <EmptyState title="There is no zone yet, and so no node." /> : <NodesResult />}
      schedule={nodes.length > 0 && <NodesSchedules />}
      scheduleNote="crops, delay, sync, addresses"
    />
  );
}

function NodesSchedules() {
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const zones = useEvaluation((evaluation) => evaluation.zones.results.zones);
  const { nodes, delays, sync, addresses } = useEvaluation((evaluation) => evaluation.nodes.results);
  const reference = usePlan((plan) => plan.sync.reference);
  const prefixBits = usePlan((plan) => plan.addresses.prefixBits);
  const crops = useMemo(() => scheduleNodes({ surfaces, zones, nodes }), [surfaces, zones, nodes]);
  const delay = useMemo(() => scheduleNodesDelay({ surfaces, delays }), [surfaces, delays]);
  const cables = useMemo(() => scheduleSync(reference, sync), [reference, sync]);
  const devices = useMemo(() => scheduleAddresses(prefixBits, addresses), [prefixBits, addresses]);
  return (
    <>
      <h3>{crops.title}</h3>
      <PlanSchedule schedule={crops} />
      {delay.count > 0 && <h3>{delay.title}</h3>}
      {delay.count > 0 && <PlanSchedule schedule={delay} />}
      <h3>{cables.title}</h3>
      <PlanSchedule schedule={cables} />
      <h3>{devices.title}</h3>
      <PlanSchedule schedule={devices} />
    </>
  );
}
