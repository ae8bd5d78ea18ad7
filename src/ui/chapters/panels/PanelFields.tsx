import type { Path } from '../../../plan/commands/path';
import { PlanChoice, PlanCount, PlanSwitch, PlanText, PlanUnit } from '../../bench/PlanFields';
import { DrivenBy } from './DrivenBy';
import { LockSteps } from './LockSteps';

const notStated = 'not stated';

/** A panel's sheet. */
export function PanelFields({ path }: { readonly path: Path }) {
  return (
    <>
      <div className="fields">
        <PlanText path={[...path, 'name']} label="Name" />
        <PlanUnit path={[...path, 'size', 'widthMm']} label="Width" unit="mm" plain="mm" />
        <PlanUnit path={[...path, 'size', 'heightMm']} label="Height" unit="mm" plain="mm" />
        <PlanUnit path={[...path, 'size', 'depthMm']} label="Depth" unit="mm" plain="mm" />
        <PlanSwitch path={[...path, 'size', 'bevelled']} label="Bevelled for convex joints" />
        <PlanCount path={[...path, 'pixels', 'wide']} label="Pixels wide" least={1} />
        <PlanCount path={[...path, 'pixels', 'high']} label="Pixels high" least={1} />
        <PlanUnit path={[...path, 'massKg']} label="Mass" unit="kg" />
        <PlanUnit path={[...path, 'lock', 'highestStackMm']} label="Highest stack" unit="mm" absent={notStated} />
        <PlanUnit path={[...path, 'lock', 'longestHangMm']} label="Longest hang" unit="mm" absent={notStated} />
        <PlanUnit path={[...path, 'light', 'refreshHz']} label="Refresh" unit="Hz" absent={notStated} />
        <PlanChoice
          path={[...path, 'light', 'refreshMode']}
          label="Refresh is"
          choices={[
            { value: 'locked', label: 'locked to the picture' },
            { value: 'fixed', label: 'fixed' },
          ]}
        />
        <PlanCount path={[...path, 'light', 'peakNits']} label="Peak, cd/m²" absent={notStated} />
        <PlanCount
          path={[...path, 'data', 'chainPanels']}
          label="Panels on a data chain"
          absent={notStated}
          least={1}
        />
        <PlanSwitch path={[...path, 'data', 'passesUnpowered']} label="Passes data without power" />
        <PlanUnit path={[...path, 'power', 'blackW']} label="At black" unit="W" />
        <PlanUnit path={[...path, 'power', 'typicalW']} label="Typical" unit="W" />
        <PlanUnit path={[...path, 'power', 'fullWhiteW']} label="At full white" unit="W" />
        <PlanUnit path={[...path, 'power', 'powerFactor']} label="Power factor" unit="share" />
        <PlanUnit path={[...path, 'power', 'lowestV']} label="Lowest voltage" unit="V" />
        <PlanUnit path={[...path, 'power', 'highestV']} label="Highest voltage" unit="V" />
        <PlanUnit path={[...path, 'power', 'chainA']} label="On a power chain" unit="A" absent={notStated} />
        <PlanCount path={[...path, 'power', 'leakageMa']} label="Earth leakage, mA" absent={notStated} />
        <PlanUnit path={[...path, 'power', 'inrushA']} label="Inrush" unit="A" absent={notStated} />
        <PlanUnit path={[...path, 'purchase', 'price']} label="Price" unit="money" absent={notStated} />
        <PlanCount path={[...path, 'purchase', 'perCase']} label="To a case" least={1} />
        <PlanUnit path={[...path, 'purchase', 'caseMassKg']} label="Mass of a case" unit="kg" />
        <PlanUnit path={[...path, 'purchase', 'leadDays']} label="Lead time" unit="days" absent={notStated} />
      </div>
      <LockSteps path={[...path, 'lock', 'stepsDeg']} />
      <DrivenBy path={[...path, 'data', 'drivenBy']} />
    </>
  );
}
