import type { Check, Fix, Place } from '../chapter';
import type { HeldStates } from './held-states';

/** Whose names are held. */
export interface HeldKind {
  readonly chapter: 'runs' | 'power';
  readonly kind: 'port' | 'circuit';
  /** Plural: 'ports'. */
  readonly things: 'ports' | 'circuits';
  /** What cannot be there any more where a name could not stay. */
  readonly lost: string;
}

const mostPlaces = 50;

/** Names that an issued revision holds: whether each stands where it was given, which could not stay, and which rest. */
export function checkHeldNames(kind: HeldKind, { kept, renamed, reused, resting }: HeldStates): Check[] {
  const { things } = kind;
  const checks: Check[] = [];
  if (renamed.length > 0) {
    const [{ name, now }] = renamed as [HeldStates['renamed'][number]];
    checks.push({
      ...base(kind, 'held-names', renamed.length),
      severity: 'watch',
      limit: 0,
      where: places(
        kind,
        renamed.map((each) => each.now),
      ),
      sentence: `Names of ${things} that were issued and could not stay: {measured}; ${kind.lost}. The first: ${name} is ${now} now. Label them anew, or take the change back.`,
    });
  } else if (kept.length > 0) {
    checks.push({
      ...base(kind, 'held-names', kept.length),
      severity: 'pass',
      limit: null,
      where: places(kind, kept.slice(0, 1)),
      sentence: `Names of ${things} that were issued and stand where they stood: {measured}.`,
    });
  }
  if (reused.length > 0) {
    checks.push({
      ...base(kind, 'held-reused', reused.length),
      severity: 'watch',
      limit: 0,
      where: places(kind, reused),
      sentence: `There are no more ${things} without a name that was issued, so that others took over such names: {measured}, the first ${reused[0]}. Take the old labels off.`,
    });
  }
  if (resting.length > 0) {
    checks.push({
      ...base(kind, 'held-resting', resting.length),
      severity: 'offer',
      limit: 0,
      where: [{ kind: 'field', name: 'names' }],
      sentence: `Names of ${things} that are kept for what is not there now: {measured}, the first ${resting[0]}. They return with it; nobody else gets them while others are left.`,
      fix: letGo(kind, resting),
    });
  }
  return checks;
}

function base({ chapter }: HeldKind, what: string, measured: number) {
  return { id: `${chapter}.${what}`, chapter, measured, unit: 'count' as const };
}

/** A port by its tag alone, a circuit with its word before it, as in the other checks. */
function places({ kind }: HeldKind, names: readonly string[]): Place[] {
  return names.slice(0, mostPlaces).map((name) => ({ kind, name: kind === 'port' ? name : `circuit ${name}` }));
}

function letGo({ things }: HeldKind, names: readonly string[]): Fix {
  return { label: 'Let these names go', command: { name: 'release-names', args: { [things]: names } } };
}
