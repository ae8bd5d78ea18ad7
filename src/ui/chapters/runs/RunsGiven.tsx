import { formatRate } from '../../../units/format-rate';
import { PlanChoice, PlanCount, PlanUnit } from '../../bench/PlanFields';
import { usePageHref } from '../../bench/use-page-href';
import { usePlan } from '../../state/use-plan';
import { GivenLink } from '../../widgets/GivenLink';

/** What a run may carry, where it may begin, and what a good wiring puts first. */
export function RunsGiven() {
  const base = usePlan((plan) => plan.picture.base);
  const href = usePageHref();
  return (
    <div className="fields">
      <GivenLink
        label="Rate and depth"
        value={`${formatRate(base.rate)} fps, ${base.depthBits} bit`}
        owner="Picture"
        href={href('picture')}
      />
      <PlanChoice
        path={['signal', 'priority']}
        label="First of all"
        choices={[
          { value: 'repeats', label: 'it repeats' },
          { value: 'fewest-ports', label: 'fewest ports' },
          { value: 'most-free', label: 'most free' },
          { value: 'shortest-cable', label: 'shortest cable' },
        ]}
      />
      <PlanUnit path={['signal', 'freeShare']} label="Keep free on each port" unit="share" />
      <PlanCount path={['signal', 'panelsMost']} label="Panels a port, at most" absent="as many as fit" least={1} />
      <PlanUnit path={['signal', 'reachMm']} label="Highest entry in reach" unit="mm" />
      <PlanChoice
        path={['signal', 'returns']}
        label="Each run returns"
        choices={[
          { value: 'none', label: 'nowhere' },
          { value: 'port', label: 'to a second port' },
          { value: 'breakout', label: 'to another breakout' },
          { value: 'processor', label: 'to another processor' },
        ]}
      />
      <PlanChoice
        path={['signal', 'ceilingEntry']}
        label="Ceiling's loom comes from"
        choices={[
          { value: 'left', label: 'the left' },
          { value: 'right', label: 'the right' },
          { value: 'bottom', label: 'below' },
          { value: 'top', label: 'above' },
        ]}
      />
    </div>
  );
}
