import type { Check } from '../chapter';
import type { PowerInputs } from './compute-power';
import { fitsWithin } from './panels-within';
import type { LegLoad, PowerResults } from './power-result';
import { serviceLimitA } from './service-limit';

const linesOf = (legs: readonly LegLoad[]) => legs.filter((load) => load.leg !== 'N');
const worstOf = (legs: readonly LegLoad[]) => legs.reduce((a, b) => (b.currentA > a.currentA ? b : a));

/** The worst leg of the stage against all service points together. */
function checkService({ power }: PowerInputs, results: PowerResults): Check[] {
  if (results.worstLegA === null) return [];
  const limit = serviceLimitA(power);
  const worst = worstOf(linesOf(results.legs));
  const isEnough = limit !== null && fitsWithin(worst.currentA, limit);
  return [
    {
      id: 'power.service',
      chapter: 'power',
      severity: limit === null ? 'offer' : isEnough ? 'pass' : 'stop',
      measured: results.worstLegA,
      limit,
      unit: 'A',
      where: [
        { kind: 'leg', name: `leg ${worst.leg}` },
        { kind: 'field', name: 'power.servicePoints' },
      ],
      sentence:
        limit === null
          ? 'The fullest leg carries {measured} at full white; what the service points carry is not stated.'
          : 'The fullest leg carries {measured} at full white; all service points together carry {limit} a leg for hours.',
    },
  ];
}

/** A distro hangs on one point: the fullest against the largest. */
function checkPoints({ power }: PowerInputs, { distros }: PowerResults): Check[] {
  if (power.servicePoints.length < 2 || distros.length === 0) return [];
  const limit = Math.max(...power.servicePoints.map((point) => point.legA)) * power.circuit.usableShare;
  const loads = distros.map((distro) => ({ distro, worst: worstOf(linesOf(distro.legs)) }));
  const fullest = loads.reduce((a, b) => (b.worst.currentA > a.worst.currentA ? b : a));
  return [
    {
      id: 'power.service-points',
      chapter: 'power',
      severity: fitsWithin(fullest.worst.currentA, limit) ? 'pass' : 'stop',
      measured: fullest.worst.currentA,
      limit,
      unit: 'A',
      where: [{ kind: 'distro', name: `distro ${fullest.distro.number}` }],
      sentence:
        'A distro hangs on one service point: the fullest draws {measured} a leg, the largest point carries {limit} for hours.',
    },
  ];
}

/** Legs that differ by more than the largest circuit could be evened out by moving one. */
function checkBalance(results: PowerResults): Check[] {
  const lines = linesOf(results.legs);
  if (results.circuits.length === 0 || results.worstLegA === null) return [];
  const worst = worstOf(lines);
  const difference = worst.currentA - Math.min(...lines.map((load) => load.currentA));
  const limit = Math.max(...results.circuits.map((circuit) => circuit.currentA));
  return [
    {
      id: 'power.balance',
      chapter: 'power',
      severity: fitsWithin(difference, limit) ? 'pass' : 'watch',
      measured: difference,
      limit,
      unit: 'A',
      where: [{ kind: 'leg', name: `leg ${worst.leg}` }],
      sentence: 'The fullest and the emptiest leg differ by {measured}; the largest circuit draws {limit}.',
    },
  ];
}

export function checkSupply(inputs: PowerInputs, results: PowerResults): Check[] {
  return [...checkService(inputs, results), ...checkPoints(inputs, results), ...checkBalance(results)];
}
