/** How much speaks for a thing having a number that is held. */
export interface NumberClaim {
  readonly thing: number;
  readonly number: number;
  readonly weight: number;
}

/**
 * Numbers of so many things: each held number goes to the thing for which most speaks, claims of the same thing and number
 * added up; the others are numbered on from the highest number that is held (0: none).
 */
export function grantNumbers(things: number, claims: readonly NumberClaim[], highestHeld: number): number[] {
  const sums = new Map<string, NumberClaim>();
  for (const claim of claims) {
    const key = `${claim.thing} ${claim.number}`;
    sums.set(key, { ...claim, weight: claim.weight + (sums.get(key)?.weight ?? 0) });
  }
  const numbers = new Array<number>(things).fill(0);
  const given = new Set<number>();
  const strongestFirst = [...sums.values()].sort(
    (a, b) => b.weight - a.weight || a.number - b.number || a.thing - b.thing,
  );
  for (const { thing, number } of strongestFirst) {
    if (numbers[thing] !== 0 || given.has(number)) continue;
    numbers[thing] = number;
    given.add(number);
  }
  let next = highestHeld;
  return numbers.map((number) => {
    if (number !== 0) return number;
    next += 1;
    return next;
  });
}
