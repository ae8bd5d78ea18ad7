import { OwnOfSurface } from '../../bench/OwnOfSurface';
import { PlanCount, PlanItem } from '../../bench/PlanFields';
import { usePlan } from '../../state/use-plan';

const returnsTo = [
  { id: 'none', name: 'nowhere' },
  { id: 'port', name: 'to a second port' },
  { id: 'breakout', name: 'to another breakout' },
  { id: 'processor', name: 'to another processor' },
];

/** What one surface has of its own: its processor, node and width of zones; or a way to give it that. */
export function SurfaceZonesFields({ surfaceId, name }: { readonly surfaceId: string; readonly name: string }) {
  const processors = usePlan((plan) => plan.catalogue.processors);
  const nodes = usePlan((plan) => plan.catalogue.nodes);
  const stage = usePlan((plan) => plan.signal.processorId);
  const processorId = stage ?? processors[0]?.id;
  const first =
    processorId === undefined
      ? null
      : { processorId, nodeId: null, zoneColumnsMost: null, returns: null, zonesUp: null };
  return (
    <OwnOfSurface of="signal" surfaceId={surfaceId} name={name} what="zones" first={first}>
      {(path) => (
        <>
          <PlanItem path={[...path, 'processorId']} label="Processor" items={processors} />
          <PlanItem path={[...path, 'nodeId']} label="Render node" items={nodes} absent="as the stage" />
          <PlanCount
            path={[...path, 'zoneColumnsMost']}
            label="Widest zone, columns"
            absent="as wide as fits"
            least={1}
          />
          <PlanItem path={[...path, 'returns']} label="Each run returns" items={returnsTo} absent="as the stage" />
          <PlanCount path={[...path, 'zonesUp']} label="Zones one above the other" absent="as few as fit" least={1} />
        </>
      )}
    </OwnOfSurface>
  );
}
