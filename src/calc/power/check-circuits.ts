import type { Check, Place } from '../chapter';
import { checkKnownPanels } from '../surfaces/check-known-panels';
import { continuousLoad } from '../tables/continuous-load';
import type { PowerInputs } from './compute-power';
import { legScheme } from './leg-scheme';
import { panelCurrent } from './panel-current';
import { ampsTolerance, fitsWithin } from './panels-within';
import type { PowerResults } from './power-result';
import { usedPanels } from './used-panels';

/** The fullest circuit against what it and the power chain of its panels may carry. One panel above that is the only way to fail. */
function checkFullest(inputs: PowerInputs, { circuits }: PowerResults): Check[] {
  const first = circuits[0];
  if (first === undefined) return [];
  const worst = circuits.reduce((a, b) => (b.currentA / b.limitA > a.currentA / a.limitA ? b : a), first);
  const { power, panels } = inputs;
  const alone = usedPanels(inputs)
    .map((panel) => panelCurrent(panel.id, panels, power.circuit, legScheme(power).lowestV))
    .filter((current) => current.panels === 0);
  const heaviest = alone.reduce((a, b) => (b.currentA - b.limitA > (a ? a.currentA - a.limitA : 0) ? b : a), alone[0]);
  if (heaviest !== undefined) {
    return [
      {
        id: 'power.circuit',
        chapter: 'power',
        severity: 'stop',
        measured: heaviest.currentA,
        limit: heaviest.limitA,
        unit: 'A',
        where: alone.map(({ panelId }) => ({ kind: 'item', name: panels.find((p) => p.id === panelId)!.name })),
        sentence: 'One panel alone draws {measured} at full white; a circuit or its power chain carries {limit}.',
      },
    ];
  }
  return [
    {
      id: 'power.circuit',
      chapter: 'power',
      severity: fitsWithin(worst.currentA, worst.limitA) ? 'pass' : 'stop',
      measured: worst.currentA,
      limit: worst.limitA,
      unit: 'A',
      where: [{ kind: 'circuit', name: `circuit ${worst.name}` }],
      sentence: 'The fullest circuit draws {measured} at full white; for hours it may carry {limit}.',
    },
  ];
}

/** A share above what NEC lets a load take that lasts. */
function checkShare({ power }: PowerInputs): Check[] {
  if (power.circuit.usableShare <= continuousLoad.usableShare * (1 + ampsTolerance)) return [];
  const where: readonly Place[] = [{ kind: 'field', name: 'power.circuit.usableShare' }];
  return [
    {
      id: 'power.usable-share',
      chapter: 'power',
      severity: 'offer',
      measured: power.circuit.usableShare,
      limit: continuousLoad.usableShare,
      unit: 'share',
      where,
      sentence:
        'Circuits, distros and service are used to {measured} of their rating; a load that lasts three hours or more takes at most {limit} in NEC practice. The local code decides.',
    },
  ];
}

export function checkCircuits(inputs: PowerInputs, results: PowerResults): Check[] {
  return [
    ...checkKnownPanels(inputs, {
      id: 'power.panel-unknown',
      chapter: 'power',
      unit: 'W',
      sentence: 'The catalogue does not have a panel that stands here, so what the legs carry cannot be said.',
    }),
    ...checkFullest(inputs, results),
    ...checkShare(inputs),
  ];
}
