import type { Path } from './commands/path';
import { pathText } from './commands/path-text';
import type { Plan } from './plan';
import type { Wall } from './wall';

/**
 * Paths of the fields that cannot do without a catalogue item: surfaces made of it, what it drives or feeds, processors whose
 * breakout it is. Stock, spares and a panel's list of processors are not among them.
 */
export function findUses(plan: Plan, itemId: string): readonly string[] {
  return [...references(plan)].filter(([, id]) => id === itemId).map(([path]) => pathText(path));
}

/** Every field that needs an item, with the id in it. */
function* references(plan: Plan): Generator<readonly [Path, string | null]> {
  const { walls, ceilings, signal, power, catalogue, alternatives } = plan;
  for (const [place, wall] of walls.entries()) yield* bandsOf(wall, ['walls', place]);
  for (const [place, { panelId }] of ceilings.entries()) yield [['ceilings', place, 'panelId'], panelId];
  yield [['signal', 'processorId'], signal.processorId];
  yield [['signal', 'nodeId'], signal.nodeId];
  for (const [place, { processorId, nodeId }] of signal.bySurface.entries()) {
    yield [['signal', 'bySurface', place, 'processorId'], processorId];
    yield [['signal', 'bySurface', place, 'nodeId'], nodeId];
  }
  yield [['power', 'distroId'], power.distroId];
  for (const [place, { outlets }] of catalogue.processors.entries()) {
    if (outlets.kind !== 'breakouts') continue;
    yield [['catalogue', 'processors', place, 'outlets', 'breakoutId'], outlets.breakoutId];
  }
  for (const [place, { wall }] of alternatives.entries()) yield* bandsOf(wall, ['alternatives', place, 'wall']);
}

function* bandsOf(wall: Wall, path: Path): Generator<readonly [Path, string]> {
  for (const [place, { panelId }] of wall.bands.entries()) yield [[...path, 'bands', place, 'panelId'], panelId];
}
