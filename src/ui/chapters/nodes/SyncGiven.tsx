import type { Phase, Sync } from '../../../plan/sync';
import { PlanChoice, PlanCount, PlanUnit } from '../../bench/PlanFields';
import { usePlan } from '../../state/use-plan';
import { MillisecondsField } from './MillisecondsField';

const phases: readonly { readonly key: keyof Sync['phase']; readonly word: string }[] = [
  { key: 'nodes', word: 'Nodes' },
  { key: 'processors', word: 'Processors' },
  { key: 'cameras', word: 'Cameras' },
  { key: 'trackers', word: 'Trackers' },
];

/** The reference of the sync, its splitters, the tracking units, and the phase of each kind of device. */
export function SyncGiven() {
  const isNetwork = usePlan((plan) => plan.sync.reference === 'ptp');
  return (
    <fieldset className="group">
      <legend>Sync</legend>
      <div className="fields">
        <PlanChoice
          path={['sync', 'reference']}
          label="Reference"
          choices={[
            { value: 'black-burst', label: 'black burst' },
            { value: 'tri-level', label: 'tri-level' },
            { value: 'ptp', label: 'precision time protocol' },
          ]}
          long
        />
        {!isNetwork && (
          <PlanCount path={['sync', 'outletsASplitter']} label="Outlets of a splitter" least={2} most={1000} />
        )}
        <PlanCount path={['sync', 'trackers']} label="Tracking units" most={1000} />
      </div>
      {phases.map(({ key, word }) => (
        <div className="fields" key={key}>
          <PhaseFields name={key} word={word} />
        </div>
      ))}
    </fieldset>
  );
}

function PhaseFields({ name, word }: { readonly name: keyof Sync['phase']; readonly word: string }) {
  const unit = usePlan((plan) => plan.sync.phase[name].unit);
  const path = ['sync', 'phase', name];
  return (
    <>
      {unit === 'ms' ? (
        <MillisecondsField path={[...path, 'amount']} label={`${word}, phase`} />
      ) : (
        <PlanUnit path={[...path, 'amount']} label={`${word}, phase`} unit="deg" />
      )}
      <PlanChoice<Phase['unit']>
        path={[...path, 'unit']}
        label="in"
        choices={[
          { value: 'ms', label: 'milliseconds' },
          { value: 'degrees', label: 'degrees of a frame' },
        ]}
      />
    </>
  );
}
