import type { Culprit } from '../../calc/faults/culprit';
import { faultModelOf, type Wired } from './fault-model-of';
import type { Selection } from './selection';

/** The part that fails where what is picked fails; null for what cannot fail as one, such as a column, or is there no more. */
export function culpritOfSelection(evaluation: Wired, selection: Selection): Culprit | null {
  const model = faultModelOf(evaluation);
  switch (selection.kind) {
    case 'panel':
      return selection.index < model.surfaces.total ? { kind: 'panel', index: selection.index } : null;
    case 'circuit':
      return selection.index < model.circuits.length ? { kind: 'circuit', index: selection.index } : null;
    case 'run': {
      const index = model.entryOf[selection.index];
      return index === undefined ? null : { kind: 'port', index };
    }
    case 'zone': {
      const index = model.processors.indexOf(evaluation.zones.results.zones[selection.index]?.processor ?? 0);
      return index < 0 ? null : { kind: 'processor', index };
    }
    case 'part':
      return { kind: selection.part, index: selection.index };
    case 'column':
      return null;
  }
}
