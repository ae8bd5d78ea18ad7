import { freshId } from '../../../plan/fresh-id';
import { AddButton, RemoveButton } from '../../bench/ListButtons';
import { PlanChoice, PlanItem, PlanSwitch, PlanText, PlanUnit } from '../../bench/PlanFields';
import { usePlan } from '../../state/use-plan';

/** The supply, how panels sit on it, the circuits, and the service points. */
export function PowerGiven() {
  const distros = usePlan((plan) => plan.catalogue.distros);
  return (
    <>
      <div className="fields">
        <PlanChoice
          path={['power', 'supply', 'kind']}
          label="Supply"
          choices={[
            { value: 'wye', label: 'three-phase, wye' },
            { value: 'split-phase', label: 'split-phase' },
          ]}
        />
        <PlanUnit path={['power', 'supply', 'legToNeutralV']} label="Leg to neutral" unit="V" />
        <PlanUnit
          path={['power', 'supply', 'lowestShare']}
          label="Lowest voltage"
          unit="share"
          hint="of nominal; circuits are sized there"
        />
        <PlanChoice
          path={['power', 'connection']}
          label="Panels sit"
          choices={[
            { value: 'leg-to-neutral', label: 'leg to neutral' },
            { value: 'leg-to-leg', label: 'leg to leg' },
          ]}
        />
        <PlanUnit path={['power', 'circuit', 'ratedA']} label="Circuit" unit="A" />
        <PlanUnit path={['power', 'circuit', 'usableShare']} label="Usable for long" unit="share" />
        <PlanItem path={['power', 'distroId']} label="Distro" items={distros} />
        <PlanUnit path={['power', 'typicalLevel']} label="Typical picture level" unit="share" />
        <PlanUnit path={['power', 'brightnessShare']} label="Brightness as set" unit="share" />
        <PlanSwitch path={['power', 'includesSignal']} label="Signal on the same service" />
      </div>
      <ServicePoints />
    </>
  );
}

function ServicePoints() {
  const points = usePlan((plan) => plan.power.servicePoints);
  const plan = usePlan((whole) => whole);
  const path = ['power', 'servicePoints'] as const;
  return (
    <>
      {points.map((point, index) => (
        <div className="fields" key={point.id}>
          <PlanText path={[...path, index, 'name']} label="Service point" />
          <PlanUnit path={[...path, index, 'legA']} label="Amperes a leg" unit="A" />
          <RemoveButton list={path} index={index} label={`service point ${point.name}`}>
            Remove {point.name}
          </RemoveButton>
        </div>
      ))}
      <AddButton
        list={path}
        index={points.length}
        value={{ id: freshId(plan, 'service'), name: `Service ${points.length + 1}`, legA: 400 }}
        label="service point"
      >
        Add a service point
      </AddButton>
    </>
  );
}
