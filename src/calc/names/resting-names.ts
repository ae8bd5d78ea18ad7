import type { HeldNames } from '../../plan/held-names';
import type { Evaluation } from '../evaluation';
import type { AnchorGround } from '../runs/locate-anchor';
import type { HeldStates } from './held-states';
import { locateNames } from './locate-names';
import { readPortName } from './read-port-name';
import { statesOfCircuits } from './states-of-circuits';
import { statesOfPorts } from './states-of-ports';

/** Held names that rest: what they stand for is not there now, or is joined with a neighbour. Processors as far as ports of theirs rest and they have no zone. */
export function restingNames(
  names: HeldNames,
  ground: AnchorGround,
  { zones, runs, power }: Pick<Evaluation, 'zones' | 'runs' | 'power'>,
): HeldNames {
  const located = locateNames(names, ground);
  const atRest = ({ resting, joined }: HeldStates) => new Set([...resting, ...joined]);
  const ports = atRest(statesOfPorts(located.ports, runs.results));
  const circuits = atRest(statesOfCircuits(located.circuits, power.results));
  const owners = new Set([...ports].map((name) => readPortName(name)?.processor));
  const driving = new Set(zones.results.zones.map(({ processor }) => processor));
  return {
    processors: names.processors.filter(({ number }) => owners.has(number) && !driving.has(number)),
    ports: names.ports.filter(({ name }) => ports.has(name)),
    circuits: names.circuits.filter(({ name }) => circuits.has(name)),
  };
}
