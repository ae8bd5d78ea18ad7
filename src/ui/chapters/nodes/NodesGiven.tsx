import { PlanCount, PlanSwitch } from '../../bench/PlanFields';
import { useEvaluation } from '../../state/use-evaluation';
import { SurfaceFeedFields } from './SurfaceFeedFields';

/** How many zones a node feeds, whether canvases are equal, and where a surface differs. */
export function NodesGiven() {
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces.surfaces);
  return (
    <>
      <div className="fields">
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
    </>
  );
}
