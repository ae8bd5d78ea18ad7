import { panelsOn } from '../../../calc/faults/panels-on';
import type { LogState, ThingState } from '../../../calc/log/log-state';
import { columnName } from '../../../calc/surfaces/column-name';
import { panelAt } from '../../../calc/surfaces/panel-at';
import type { TickedKind } from '../../../plan/build-log';
import { faultModelOf, type Wired } from '../../state/fault-model-of';
import type { Selection } from '../../state/selection';

/** What can be ticked of what is picked: a panel's column, port and circuit; else the thing itself. */
export type ThingsInHand = Readonly<Partial<Record<TickedKind, ThingState>>>;

export function thingsInHand(evaluation: Wired, state: LogState, selection: Selection): ThingsInHand {
  const named = (of: TickedKind, name: string | undefined): ThingsInHand => {
    const thing = name === undefined ? undefined : state[of].find((one) => one.name === name);
    return thing ? { [of]: thing } : {};
  };
  const { runs, power, surfaces } = evaluation;
  switch (selection.kind) {
    case 'column':
    case 'circuit':
      return named(selection.kind, selection.name);
    case 'run':
      return named('port', selection.name);
    case 'panel': {
      const panel = panelAt(surfaces, selection.index);
      return {
        ...(panel && named('column', columnName(surfaces, panel.surface, panel.column))),
        ...named('port', runs.results.runs[runs.results.runOf[selection.index] ?? -1]?.port),
        ...named('circuit', power.results.circuits[power.results.circuitOf[selection.index] ?? -1]?.name),
      };
    }
    case 'part': {
      const model = faultModelOf(evaluation);
      if (selection.part === 'port' || selection.part === 'home-run') {
        return named('port', model.outlets[selection.index]?.port);
      }
      if (selection.part !== 'jumper' && selection.part !== 'power-jumper') return {};
      const to = panelsOn(model, { kind: selection.part, index: selection.index })[1] ?? -1;
      return selection.part === 'jumper'
        ? named('port', runs.results.runs[runs.results.runOf[to] ?? -1]?.port)
        : named('circuit', power.results.circuits[power.results.circuitOf[to] ?? -1]?.name);
    }
    case 'zone':
      return {};
  }
}
