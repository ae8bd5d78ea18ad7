import { panelAt } from '../calc/surfaces/panel-at';
import type { StageParts } from './stage-parts';

/** A panel and its way in one line, as a crew asks for it: 'A C38 R9, port 3B-04, 5 of 10, circuit D4-11 on L2'; null where there is no such panel. */
export function describePanel(
  { surfaces, runs, power }: Pick<StageParts, 'surfaces' | 'runs' | 'power'>,
  index: number,
): string | null {
  const panel = panelAt(surfaces, index);
  if (panel === null) return null;
  const run = runs.runs[runs.runOf[index] ?? -1];
  const circuit = power.circuits[power.circuitOf[index] ?? -1];
  return [
    panel.name,
    run === undefined ? 'on no port' : `port ${run.port}, ${runs.placeOf[index]} of ${run.count}`,
    circuit === undefined ? 'on no circuit' : `circuit ${circuit.name} on ${circuit.leg}`,
  ].join(', ');
}
