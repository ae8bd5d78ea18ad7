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

/** A distro hangs whole on one point. What all points carry together is checked apart. */
function checkPoints({ power }: PowerInputs, { distros, points, worstLegA }: PowerResults): Check[] {
  if (power.servicePoints.length < 2 || distros.length === 0 || worstLegA === null) return [];
  const common = { id: 'power.service-points', chapter: 'power', unit: 'A' } as const;
  const largestA = Math.max(...power.servicePoints.map((point) => point.legA)) * power.circuit.usableShare;
  const distro = distros
    .map(({ number, legs }) => ({ number, worst: worstOf(linesOf(legs)) }))
    .reduce((a, b) => (b.worst.currentA > a.worst.currentA ? b : a));
  if (!fitsWithin(distro.worst.currentA, largestA)) {
    return [
      {
        ...common,
        severity: 'stop',
        measured: distro.worst.currentA,
        limit: largestA,
        where: [{ kind: 'distro', name: `distro ${distro.number}` }],
        sentence:
          'A distro hangs on one service point: the fullest draws {measured} a leg, the largest point carries {limit} for hours.',
      },
    ];
  }
  if (points.length > 0) {
    const used = ({ currentA, limitA }: LegLoad) => currentA / limitA!;
    const point = points
      .map(({ name, distros: on, legs }) => ({ name, on, worst: worstOf(linesOf(legs)) }))
      .reduce((a, b) => (used(b.worst) > used(a.worst) ? b : a));
    return [
      {
        ...common,
        severity: 'pass',
        measured: point.worst.currentA,
        limit: point.worst.limitA,
        where: point.on.slice(0, 50).map((number) => ({ kind: 'distro', name: `distro ${number}` })),
        sentence: `The distros can be hung on the service points whole: the fullest, ${point.name}, then carries {measured} a leg; for hours it may carry {limit}.`,
      },
    ];
  }
  const limit = serviceLimitA(power);
  if (limit === null || !fitsWithin(worstLegA, limit)) return [];
  return [
    {
      ...common,
      severity: 'stop',
      measured: worstLegA,
      limit,
      where: [{ kind: 'field', name: 'power.servicePoints' }],
      sentence:
        'Each distro hangs whole on one service point, and no way was found to share them out, though together they draw {measured} a leg and all points together carry {limit} for hours.',
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
