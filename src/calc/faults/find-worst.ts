import { type Culprit, type CulpritKind, culpritKinds } from './culprit';
import { culpritName } from './culprit-words';
import { culpritsOf, type FaultModel } from './fault-model';
import { mostDarkened } from './most-darkened';

export interface Failure {
  readonly culprit: Culprit;
  readonly name: string;
  readonly dark: Uint32Array;
}

/** A trunk loses what its breakout loses and a port what its home run does: the table has one of each pair. */
const leftOut: readonly CulpritKind[] = ['trunk', 'port'];
/** Of one kind at most, so that small parts are seen beside the large ones. */
const kindMost = 3;
const listMost = 10;

/** What a part darkens: `darkBy`, or an answer kept from before. */
export type DarkOf = (culprit: Culprit) => Uint32Array;

/** The ten worst single failures by panels lost, at most three of a kind, those that lose as much by name. */
export function findWorst(model: FaultModel, darkOf: DarkOf): readonly Failure[] {
  const worst: Failure[] = [];
  const byCircuit = new Map<number, number>();
  for (const kind of [...culpritKinds].reverse()) {
    if (leftOut.includes(kind)) continue;
    worst.push(
      ...worstOfKind(model, kind, darkOf, byCircuit, worst.length < listMost ? 0 : worst[listMost - 1]!.dark.length),
    );
    worst.sort(byLoss);
  }
  return worst.slice(0, listMost);
}

function byLoss(one: Failure, other: Failure): number {
  return other.dark.length - one.dark.length || compare(one.name, other.name);
}

/** By code points, digits as numbers: the same on every machine, and 'port 3B-9' before 'port 3B-10'. */
function compare(one: string, other: string): number {
  const pad = (text: string) => text.replace(/\d+/g, (digits) => digits.padStart(8, '0'));
  return pad(one) < pad(other) ? -1 : pad(one) > pad(other) ? 1 : 0;
}

/** Takes down what each circuit darkens, by its index: its jumpers darken no more. */
function worstOfKind(
  model: FaultModel,
  kind: CulpritKind,
  darkOf: DarkOf,
  byCircuit: Map<number, number>,
  atLeast: number,
): readonly Failure[] {
  const found: Failure[] = [];
  let least = Math.max(1, atLeast);
  for (const culprit of culpritsOf(model, kind)) {
    if (mostDarkened(model, culprit, byCircuit) < least) continue;
    const dark = darkOf(culprit);
    if (kind === 'circuit') byCircuit.set(culprit.index, dark.length);
    if (dark.length < least) continue;
    found.push({ culprit, name: culpritName(model, culprit), dark });
    if (found.length <= kindMost) continue;
    found.sort(byLoss).pop();
    least = Math.max(least, found[kindMost - 1]!.dark.length);
  }
  return found.sort(byLoss);
}
