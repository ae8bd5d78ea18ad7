import type { HeldChain, HeldNames } from '../../plan/held-names';
import type { Anchor } from '../../plan/primitives';
import type { Evaluation } from '../evaluation';
import { type AnchorGround, anchorAt } from '../runs/locate-anchor';
import { zonePanels } from '../zones/zone-of-panels';
import { restingNames } from './resting-names';

/** What names are read from. */
export type NamedStage = Pick<Evaluation, 'surfaces' | 'ceilings' | 'zones' | 'runs' | 'power'>;

/**
 * Names of processors, ports and circuits as they are in force, with the panels by which they can be held: what is issued. Of
 * names held `before`, those that rest stay held.
 */
export function namesOfEvaluation(
  evaluation: NamedStage,
  walls: AnchorGround['walls'],
  before: HeldNames | null,
): HeldNames {
  const { surfaces, runs, power } = evaluation;
  const ground: AnchorGround = { surfaces, walls, ceilings: evaluation.ceilings.results };
  const anchorOf = (panel: number): Anchor | null => {
    const surface = surfaces.offsets.findLastIndex((offset) => offset <= panel);
    return anchorAt(ground, surface, panel - surfaces.offsets[surface]!);
  };
  const held = (name: string, from: number, to: number): HeldChain[] => {
    const [first, last] = [anchorOf(from), anchorOf(to)];
    return first === null || last === null ? [] : [{ name, first, last }];
  };
  const { order } = runs.results;
  const ports = runs.results.runs.flatMap(({ port, returnPort, start, count }) => {
    const [first, last] = [order[start]!, order[start + count - 1]!];
    return [...held(port, first, last), ...(returnPort === null ? [] : held(returnPort, last, first))];
  });
  const circuits = power.results.circuits.flatMap(({ name, start, count }) =>
    held(name, power.results.order[start]!, power.results.order[start + count - 1]!),
  );
  const rest = before === null ? null : restingNames(before, ground, evaluation);
  return {
    processors: [...processorsOf(evaluation, ground), ...(rest?.processors ?? [])],
    ports: [...ports, ...(rest?.ports ?? [])],
    circuits: [...circuits, ...(rest?.circuits ?? [])],
  };
}

/** Every processor with the lower left panel of its zone. */
function processorsOf({ zones, surfaces }: NamedStage, ground: AnchorGround): HeldNames['processors'] {
  return zones.results.zones.flatMap((zone) => {
    const surface = surfaces.surfaces.findIndex(({ surfaceId }) => surfaceId === zone.surfaceId);
    const [corner] = zonePanels(surfaces.surfaces[surface]!, zone);
    const at = corner === undefined ? null : anchorAt(ground, surface, corner);
    return at === null ? [] : [{ number: zone.processor, at }];
  });
}
