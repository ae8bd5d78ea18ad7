import { AddButton, RemoveButton } from '../../bench/ListButtons';
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
  const index = usePlan((plan) => plan.signal.bySurface.findIndex((entry) => entry.surfaceId === surfaceId));
  const count = usePlan((plan) => plan.signal.bySurface.length);
  const processors = usePlan((plan) => plan.catalogue.processors);
  const nodes = usePlan((plan) => plan.catalogue.nodes);
  const stage = usePlan((plan) => plan.signal.processorId);
  const list = ['signal', 'bySurface'] as const;
  if (index < 0) {
    const first = stage ?? processors[0]?.id;
    if (first === undefined) return null;
    const value = { surfaceId, processorId: first, nodeId: null, zoneColumnsMost: null, returns: null, zonesUp: null };
    return (
      <AddButton list={list} index={count} value={value} label={`zones of ${name}`}>
        Give {name} its own
      </AddButton>
    );
  }
  const path = [...list, index];
  return (
    <fieldset className="group">
      <legend>{name}</legend>
      <div className="fields">
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
      </div>
      <RemoveButton list={list} index={index} label={`own zones of ${name}`}>
        As the stage
      </RemoveButton>
    </fieldset>
  );
}
