import type { Distro } from '../../plan/distro';
import type { Check, Fix } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { checkSupply } from './check-supply';
import { computePower, type PowerInputs } from './compute-power';
import { fitsWithin } from './panels-within';
import type { DistroLoad, PowerResults } from './power-result';

/** The first distro that, taken, stops nothing of circuits, legs and service that does not stop now. */
function chooseDistro(inputs: PowerInputs, results: PowerResults): { readonly fix: Fix } | undefined {
  const { distros, power } = inputs;
  const stopped = new Set(stopsOf(checkSupply(inputs, results)));
  const fits = distros.find((distro) => {
    if (!fitsWithin(power.circuit.ratedA, distro.legA)) return false;
    const tried = { ...inputs, power: { ...power, distroId: distro.id } };
    const after = computePower(tried);
    return stopsOf([...checkFullest(tried, after, distro), ...checkSupply(tried, after)]).every((id) =>
      stopped.has(id),
    );
  });
  if (fits === undefined) return undefined;
  const label = `Take ${fits.name}`;
  return { fix: setFieldsFix(label, 'distro', [{ path: ['power', 'distroId'], value: fits.id }]) };
}

const stopsOf = (checks: readonly Check[]): string[] =>
  checks.flatMap(({ id, severity }) => (severity === 'stop' ? [id] : []));

function checkChoice(inputs: PowerInputs, results: PowerResults, distro: Distro | undefined): Check[] {
  if (distro !== undefined) return [];
  const isDangling = inputs.power.distroId !== null;
  return [
    {
      id: 'power.distro',
      chapter: 'power',
      severity: isDangling ? 'stop' : 'offer',
      measured: null,
      limit: null,
      unit: 'count',
      where: [{ kind: 'field', name: 'power.distroId' }],
      sentence: isDangling
        ? 'The catalogue does not have the distro that is chosen; circuits are numbered as if one took them all.'
        : 'No distro is chosen; circuits are numbered as if one took them all.',
      ...chooseDistro(inputs, results),
    },
  ];
}

const worstLegA = (distro: DistroLoad) =>
  Math.max(0, ...distro.legs.filter((load) => load.leg !== 'N').map((load) => load.currentA));

/** Circuits and legs of the fullest distros against what one takes. */
function checkFullest({ power }: PowerInputs, { distros }: PowerResults, distro: Distro | undefined): Check[] {
  const first = distros[0];
  if (distro === undefined || first === undefined) return [];
  const limitA = distro.legA * power.circuit.usableShare;
  const byCircuits = distros.reduce((a, b) => (b.circuits > a.circuits ? b : a), first);
  const byLeg = distros.reduce((a, b) => (worstLegA(b) > worstLegA(a) ? b : a), first);
  const above = distros.filter((load) => !fitsWithin(worstLegA(load), limitA));
  const places = above.length > 0 ? above : [byLeg];
  return [
    {
      id: 'power.distro-circuits',
      chapter: 'power',
      severity: byCircuits.circuits > distro.circuits ? 'stop' : 'pass',
      measured: byCircuits.circuits,
      limit: distro.circuits,
      unit: 'count',
      where: [{ kind: 'distro', name: `distro ${byCircuits.number}` }],
      sentence: 'Circuits on the fullest distro: {measured} of {limit}.',
    },
    {
      id: 'power.distro-leg',
      chapter: 'power',
      severity: above.length > 0 ? 'stop' : 'pass',
      measured: worstLegA(byLeg),
      limit: limitA,
      unit: 'A',
      where: places.slice(0, 50).map((load) => ({ kind: 'distro', name: `distro ${load.number}` })),
      sentence: 'The fullest leg of a distro carries {measured} at full white; for hours it may carry {limit}.',
    },
  ];
}

export function checkDistros(inputs: PowerInputs, results: PowerResults): Check[] {
  const distro = inputs.distros.find((d) => d.id === inputs.power.distroId);
  return [...checkChoice(inputs, results, distro), ...checkFullest(inputs, results, distro)];
}
