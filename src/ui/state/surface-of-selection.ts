import { panelsOn } from '../../calc/faults/panels-on';
import { panelAt } from '../../calc/surfaces/panel-at';
import { faultModelOf, type Wired } from './fault-model-of';
import type { Selection } from './selection';

/** The surface on which a drawing shows what is picked, of several the first; null where it shows on none. */
export function surfaceOfSelection(evaluation: Wired, selection: Selection): string | null {
  switch (selection.kind) {
    case 'column':
      return selection.surfaceId;
    case 'panel':
      return panelAt(evaluation.surfaces, selection.index)?.surface.surfaceId ?? null;
    case 'zone':
      return evaluation.zones.results.zones[selection.index]?.surfaceId ?? null;
    case 'run':
      return evaluation.runs.results.runs[selection.index]?.surfaceId ?? null;
    case 'circuit':
      return evaluation.power.results.circuits[selection.index]?.surfaceId ?? null;
    case 'part': {
      const [first] = panelsOn(faultModelOf(evaluation), { kind: selection.part, index: selection.index });
      return first === undefined ? null : (panelAt(evaluation.surfaces, first)?.surface.surfaceId ?? null);
    }
  }
}
