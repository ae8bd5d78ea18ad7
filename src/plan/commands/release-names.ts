import { produce } from 'immer';
import { admit } from './admit';
import type { CommandDefinition } from './command';
import { removeWhere } from './remove-where';

export interface ReleaseNamesArguments {
  readonly ports?: readonly string[];
  readonly circuits?: readonly string[];
}

/**
 * Lets names go that an issued revision holds: others may have them from now on. A processor whose last port goes is let go with
 * it. What was issued stays as it is.
 */
export const releaseNames: CommandDefinition<'release-names', ReleaseNamesArguments> = {
  name: 'release-names',
  label: (_plan, { ports = [], circuits = [] }) => {
    const [first, ...more] = [...ports, ...circuits];
    return more.length === 0 ? `let go of the name ${first ?? ''}`.trim() : `let go of ${more.length + 1} names`;
  },
  apply(plan, { ports = [], circuits = [] }) {
    const released = { ports: new Set(ports), circuits: new Set(circuits) };
    return admit(
      plan,
      produce(plan, ({ names }) => {
        if (names === null) return;
        const before = new Set(names.ports.map(({ name }) => processorOf(name)));
        removeWhere(names.ports, ({ name }) => released.ports.has(name));
        removeWhere(names.circuits, ({ name }) => released.circuits.has(name));
        const after = new Set(names.ports.map(({ name }) => processorOf(name)));
        removeWhere(names.processors, ({ number }) => before.has(`${number}`) && !after.has(`${number}`));
      }),
    );
  },
};

/** '3' of '3B-04'. */
function processorOf(port: string): string {
  return /^\d+/.exec(port)?.[0] ?? '';
}
