import { expect, test } from 'vitest';
import { coveredPanels } from '../../../src/calc/log/covered-panels';
import { listThings } from '../../../src/calc/log/list-things';
import { stateOfLog } from '../../../src/calc/log/log-state';
import { smallStage, stateWith, ticked } from './small-stage';

const panelsOf = (covered: Uint8Array) => [...covered].flatMap((one, panel) => (one === 1 ? [panel] : []));

test('coveredPanels takes the panels of columns, ports and circuits that are ticked for the step, each once', () => {
  const log = [
    ticked('column', 'C1', 'wired'),
    ticked('port', '1A-03', 'wired'),
    ticked('circuit', 'D1-4', 'wired'),
    ticked('circuit', 'D1-3', 'powered'),
    ticked('port', '2A-01', 'wired', { done: false }),
  ];
  expect(panelsOf(coveredPanels(stateWith(log), 'wired', 12))).toEqual([0, 1, 2, 3, 9, 10, 11]);
  expect(panelsOf(coveredPanels(stateWith(log), 'powered', 12))).toEqual([6, 7, 8]);
  expect(panelsOf(coveredPanels(stateWith(log), 'tested', 12))).toEqual([]);
});

test('coveredPanels leaves out panels whose run only comes back to a port that is ticked', () => {
  const { runs, surfaces } = smallStage;
  const returned = runs.runs.map((run, index) => ({ ...run, returnPort: index === 0 ? '1B-01' : null }));
  const things = listThings({ ...smallStage, runs: { ...runs, runs: returned } });
  const back = stateOfLog(surfaces, things, { ticks: [ticked('port', '1B-01', 'wired')] });
  expect(panelsOf(coveredPanels(back, 'wired', 12))).toEqual([]);
});
