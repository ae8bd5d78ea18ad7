import { PlanCount, PlanText } from '../../bench/PlanFields';

/** First address of each kind of device, the network's prefix, and the ports of a switch. */
export function AddressesGiven() {
  return (
    <fieldset className="group">
      <legend>Addresses</legend>
      <div className="fields">
        <PlanText path={['addresses', 'nodes']} label="Nodes from" />
        <PlanText path={['addresses', 'processors']} label="Processors from" />
        <PlanText path={['addresses', 'cameras']} label="Cameras from" />
        <PlanText path={['addresses', 'trackers']} label="Trackers from" />
        <PlanCount path={['addresses', 'prefixBits']} label="Bits of the network" least={8} most={30} />
        <PlanCount path={['addresses', 'portsASwitch']} label="Ports of a switch" least={4} most={1000} />
      </div>
    </fieldset>
  );
}
