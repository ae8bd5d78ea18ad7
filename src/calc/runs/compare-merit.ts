import type { Priority } from '../../plan/signal';
import type { ZoneWiring } from './search/zone-wiring';
import type { WiringTerms } from './zone-solver';

type Count = (wiring: ZoneWiring, terms: WiringTerms) => number;

const fits: readonly Count[] = [
  ({ entriesOutOfReach }) => entriesOutOfReach,
  ({ ports }, { portsThere }) => Math.max(0, ports - portsThere),
];
const hardware: Count = ({ ports }, { portsABreakout }) => (portsABreakout > 0 ? Math.ceil(ports / portsABreakout) : 0);
const figures: Count = (wiring) => wiring.figures;
const load: Count = ({ fullestPixels }) => fullestPixels;
const ports: Count = (wiring) => wiring.ports;
const cable: Count = ({ cableMm }) => cableMm;

/** What the user puts first, once a wiring fits. */
const first: Readonly<Record<Priority, readonly Count[]>> = {
  repeats: [],
  'fewest-ports': [ports],
  'most-free': [load],
  'shortest-cable': [cable],
};

/**
 * Orders wirings of a zone by merit, the best first: what fits (reach, ports there); what the user puts first; least
 * hardware; it repeats, by its figures of run; even load; short cable; fewer ports (common practice, no source).
 */
export function compareMerit(terms: WiringTerms): (a: ZoneWiring, b: ZoneWiring) => number {
  const counts = [...fits, ...first[terms.priority], hardware, figures, load, cable, ports];
  return (a, b) => {
    for (const count of counts) {
      const order = count(a, terms) - count(b, terms);
      if (order !== 0) return order;
    }
    return 0;
  };
}
