import type { Path } from '../../../plan/commands/path';
import { PlanCount, PlanText, PlanUnit } from '../../bench/PlanFields';

const notStated = 'not stated';

interface GearFieldsProps {
  readonly list: 'breakouts' | 'nodes' | 'distros' | 'cables';
  readonly path: Path;
}

/** The sheet of a breakout, render node, distro or cable. */
export function GearFields({ list, path }: GearFieldsProps) {
  const isCable = list === 'cables';
  const isSignal = list === 'breakouts' || list === 'nodes';
  return (
    <div className="fields">
      <PlanText path={[...path, 'name']} label="Name" />
      {list === 'breakouts' && <PlanCount path={[...path, 'ports']} label="Ports" least={1} />}
      {list === 'breakouts' && <PlanCount path={[...path, 'trunkMbps']} label="Trunk, Mbit/s" least={1} />}
      {list === 'nodes' && <PlanCount path={[...path, 'outputs']} label="Video outputs" least={1} most={64} />}
      {list === 'nodes' && (
        <PlanCount path={[...path, 'canvasPixels']} label="Largest canvas, px" least={1} absent={notStated} />
      )}
      {list === 'distros' && <PlanCount path={[...path, 'circuits']} label="Circuits" least={1} />}
      {list === 'distros' && <PlanUnit path={[...path, 'legA']} label="Amperes a leg" unit="A" />}
      {isSignal && <PlanUnit path={[...path, 'powerW']} label="Power" unit="W" />}
      {isSignal && <PlanCount path={[...path, 'rackUnits']} label="Rack units" />}
      <PlanUnit path={[...path, 'massKg']} label="Mass" unit="kg" />
      {isCable ? (
        <PlanUnit path={[...path, 'price']} label="Price" unit="money" absent={notStated} />
      ) : (
        <>
          <PlanUnit path={[...path, 'purchase', 'price']} label="Price" unit="money" absent={notStated} />
          <PlanUnit path={[...path, 'purchase', 'leadDays']} label="Lead time" unit="days" absent={notStated} />
        </>
      )}
    </div>
  );
}
