import type { Path } from '../../../plan/commands/path';
import { PlanChoice, PlanCount, PlanItem, PlanText, PlanUnit } from '../../bench/PlanFields';
import { usePlan } from '../../state/use-plan';
import { usePlanField } from '../../state/use-plan-field';

const notStated = 'not stated';

/** A processor's sheet. */
export function ProcessorFields({ path }: { readonly path: Path }) {
  const breakouts = usePlan((plan) => plan.catalogue.breakouts);
  const outlets = usePlanField<{ readonly kind: 'direct' | 'breakouts' }>([...path, 'outlets'], 'outlets');
  return (
    <div className="fields">
      <PlanText path={[...path, 'name']} label="Name" />
      <PlanCount path={[...path, 'canvas', 'pixels']} label="Pixels at 60 Hz and 8 bit" least={1} />
      <PlanCount path={[...path, 'canvas', 'widest']} label="Widest canvas, px" least={1} />
      <PlanCount path={[...path, 'canvas', 'highest']} label="Highest canvas, px" least={1} />
      <PlanCount path={[...path, 'canvas', 'inputGbps']} label="Input, Gbit/s" absent={notStated} />
      <PlanCount path={[...path, 'port', 'lineMbps']} label="Port, Mbit/s" least={1} />
      <PlanCount
        path={[...path, 'port', 'sheetPixels']}
        label="Pixels a port at 60 Hz and 8 bit"
        absent={notStated}
        least={1}
      />
      <PlanUnit path={[...path, 'port', 'lowestRateHz']} label="Grows down to" unit="Hz" />
      <PlanCount path={[...path, 'port', 'carriageBits', 'at8']} label="Bits a pixel at 8 bit" least={1} />
      <PlanCount path={[...path, 'port', 'carriageBits', 'at10']} label="Bits a pixel at 10 bit" least={1} />
      <PlanCount path={[...path, 'port', 'carriageBits', 'at12']} label="Bits a pixel at 12 bit" least={1} />
      <PlanChoice
        path={[...path, 'port', 'counting']}
        label="A port counts"
        choices={[
          { value: 'panels', label: "the panels' pixels" },
          { value: 'rectangle', label: 'the rectangle round them' },
        ]}
      />
      {outlets.value.kind === 'direct' ? (
        <PlanCount path={[...path, 'outlets', 'ports']} label="Ports" least={1} />
      ) : (
        <>
          <PlanItem path={[...path, 'outlets', 'breakoutId']} label="Breakout" items={breakouts} />
          <PlanCount path={[...path, 'outlets', 'most']} label="Breakouts at most" least={1} />
        </>
      )}
      <PlanUnit path={[...path, 'powerW']} label="Power" unit="W" />
      <PlanUnit path={[...path, 'massKg']} label="Mass" unit="kg" />
      <PlanCount path={[...path, 'rackUnits']} label="Rack units" />
      <PlanUnit path={[...path, 'purchase', 'price']} label="Price" unit="money" absent={notStated} />
      <PlanUnit path={[...path, 'purchase', 'leadDays']} label="Lead time" unit="days" absent={notStated} />
    </div>
  );
}
