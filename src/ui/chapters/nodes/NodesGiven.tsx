import { PlanCount, PlanItem, PlanSwitch } from '../../bench/PlanFields';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { AddressesGiven } from './AddressesGiven';
import { DelayGiven } from './DelayGiven';
import { SurfaceFeedFields } from './SurfaceFeedFields';
import { SyncGiven } from './SyncGiven';

/** Which node, how many zones one feeds, whether canvases are equal, where a surface differs; delay, sync and addresses. */
export function NodesGiven() {
  const items = usePlan((plan) => plan.catalogue.nodes);
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces.surfaces);
  return (
    <>
      <div className="fields">
        <PlanItem path={['signal', 'nodeId']} label="Render node" items={items} absent="none chosen" />
        <PlanCount
          path={['feed', 'zonesANode']}
          label="Zones a node, at most"
          absent="all of a surface"
          least={1}
          most={10_000}
        />
        <PlanSwitch path={['feed', 'equalCanvases']} label="All canvases of a surface equal" />
        <PlanCount path={['feed', 'spareNodes']} label="Spare nodes" />
      </div>
      {surfaces.map(({ surfaceId, letter, name }) => (
        <SurfaceFeedFields key={surfaceId} surfaceId={surfaceId} name={`${letter} ${name}`} />
      ))}
      <DelayGiven />
      <SyncGiven />
      <AddressesGiven />
    </>
  );
}
