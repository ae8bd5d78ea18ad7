import type { Culprit } from '../../calc/faults/culprit';
import { culpritName } from '../../calc/faults/culprit-words';
import { faultModelOf, type Wired } from './fault-model-of';
import type { Selection } from './selection';
import { zoneName } from './zone-name';

/** A part as it is picked: a port by its run and a processor by its zone where they have one. */
export function selectionOfCulprit(evaluation: Wired, { kind, index }: Culprit): Selection {
  const model = faultModelOf(evaluation);
  const name = culpritName(model, { kind, index });
  switch (kind) {
    case 'panel':
      return { kind, index, name };
    case 'circuit':
      return { kind, index, name: model.circuits[index]! };
    case 'port': {
      const { end, run, port } = model.outlets[index]!;
      return end === 'entry' ? { kind: 'run', index: run, name: port } : { kind: 'part', part: kind, index, name };
    }
    case 'processor': {
      const { zones } = evaluation.zones.results;
      const zone = zones.findIndex(({ processor }) => processor === model.processors[index]);
      return zone < 0
        ? { kind: 'part', part: kind, index, name }
        : { kind: 'zone', index: zone, name: zoneName(zones[zone]!) };
    }
    default:
      return { kind: 'part', part: kind, index, name };
  }
}
