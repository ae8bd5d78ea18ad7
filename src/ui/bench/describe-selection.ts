import { whereIs } from '../../calc/faults/culprit-words';
import { panelAt } from '../../calc/surfaces/panel-at';
import { culpritOfSelection } from '../state/culprit-of-selection';
import { faultModelOf, type Wired } from '../state/fault-model-of';
import type { Selection } from '../state/selection';
import type { Format } from '../widgets/use-format';

function nameOf(evaluation: Wired, panel: number | undefined): string {
  return panel === undefined ? 'no panel' : (panelAt(evaluation.surfaces, panel)?.name ?? 'no panel');
}

/** One line about what is picked, where it is not a panel; null where it is gone. */
export function describeSelection(evaluation: Wired, selection: Selection, format: Format): string | null {
  switch (selection.kind) {
    case 'panel':
      return null;
    case 'run': {
      const run = evaluation.runs.results.runs[selection.index];
      if (!run) return null;
      const entry = nameOf(evaluation, evaluation.runs.results.order[run.start]);
      const reach = run.inReach ? '' : ', out of reach';
      return `${run.count} panels, ${format(run.share, 'share')} of the port, entry ${entry} at ${format(run.entryHeightMm, 'mm')}${reach}`;
    }
    case 'circuit': {
      const circuit = evaluation.power.results.circuits[selection.index];
      if (!circuit) return null;
      const entry = nameOf(evaluation, evaluation.power.results.order[circuit.start]);
      return `${circuit.count} panels, ${format(circuit.currentA, 'A')} on ${circuit.leg}, entry ${entry}`;
    }
    case 'zone': {
      const zone = evaluation.zones.results.zones[selection.index];
      if (!zone) return null;
      const to = (first: number, count: number) => `${first} to ${first + count - 1}`;
      return `${zone.panels} panels, columns ${to(zone.firstColumn, zone.columns)}, rows ${to(zone.firstRow, zone.rows)}, canvas ${zone.canvasWidth} × ${zone.canvasHeight}, ${zone.ports} ports`;
    }
    case 'part': {
      const culprit = culpritOfSelection(evaluation, selection);
      return culprit && whereIs(faultModelOf(evaluation), culprit);
    }
    case 'column': {
      const surface = evaluation.surfaces.surfaces.find((one) => one.surfaceId === selection.surfaceId);
      if (!surface) return null;
      let panels = 0;
      for (let row = 0; row < surface.rows; row++) {
        if (surface.at[(selection.column - 1) * surface.rows + row]! >= 0) panels += 1;
      }
      return `${panels} panels on ${surface.name}`;
    }
  }
}
