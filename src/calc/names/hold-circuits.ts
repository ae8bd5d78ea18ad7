import { grantChains } from './grant-chains';
import { grantNumbers, type NumberClaim } from './grant-numbers';
import type { LocatedChain } from './locate-names';

/** Circuits before they have names: panels numbered through all surfaces, entry first. */
export interface CircuitsToName {
  readonly circuits: readonly { readonly panels: readonly number[]; readonly offset: number }[];
  /** First circuit of each distro. */
  readonly distroStarts: readonly number[];
}

/** Numbers that make the names of circuits: 'D4-11' is distro 4, circuit 11. */
export interface CircuitNumbers {
  /** By distro, in the order of `distroStarts`. */
  readonly distros: readonly number[];
  /** By circuit, within its distro. */
  readonly circuits: readonly number[];
}

/** Distros and circuits as they are numbered where no name is held: in their order. */
export function numberCircuits({ circuits, distroStarts }: CircuitsToName): CircuitNumbers {
  return {
    distros: distroStarts.map((_, distro) => distro + 1),
    circuits: distroStarts.flatMap((from, d) =>
      Array.from({ length: (distroStarts[d + 1] ?? circuits.length) - from }, (_, i) => i + 1),
    ),
  };
}

/**
 * Numbers where names are held: a distro keeps that to which most of its circuits' panels belong, a circuit that of the held
 * chain which it goes on from, on that distro. Others take numbers that were never held, and held ones only where the distro
 * has no more. `most` circuits a distro; null: nobody says.
 */
export function holdCircuits(
  laid: CircuitsToName,
  held: readonly LocatedChain[],
  panels: number,
  most: number | null,
): CircuitNumbers {
  const { circuits, distroStarts } = laid;
  const chainOf = new Int32Array(panels).fill(-1);
  const placeOf = new Uint32Array(panels);
  circuits.forEach((circuit, index) => {
    circuit.panels.forEach((panel, place) => {
      chainOf[circuit.offset + panel] = index;
      placeOf[circuit.offset + panel] = place;
    });
  });
  const distroOf = numberCircuits(laid).circuits.map(() => 0);
  distroStarts.forEach((from, distro) => {
    distroOf.fill(distro, from);
  });
  const named = held.map(({ name }) => readCircuitName(name));
  const claims = held.flatMap(({ first }, index): NumberClaim[] => {
    const circuit = first < 0 ? -1 : chainOf[first]!;
    const name = named[index];
    return circuit < 0 || name == null ? [] : [{ thing: distroOf[circuit]!, number: name.distro, weight: 1 }];
  });
  const highest = named.reduce((most, name) => Math.max(most, name?.distro ?? 0), 0);
  const distros = grantNumbers(distroStarts.length, claims, highest);
  const heldOf = grantChains({ chainOf, placeOf, chains: circuits.length }, held, (circuit, index) => {
    const name = named[index];
    return name != null && name.distro === distros[distroOf[circuit]!] && name.circuit <= (most ?? name.circuit);
  });
  const free = distros.map((distro) => {
    const own = named.flatMap((name) => (name?.distro === distro ? [name.circuit] : []));
    return new FreeNumbers(own, most);
  });
  for (const index of heldOf.keys()) {
    if (heldOf[index]! >= 0) free[distroOf[index]!]!.take(named[heldOf[index]!]!.circuit);
  }
  return {
    distros,
    circuits: circuits.map((_, index) => {
      const name = named[heldOf[index]!];
      return name == null ? free[distroOf[index]!]!.takeNext() : name.circuit;
    }),
  };
}

function readCircuitName(name: string): { readonly distro: number; readonly circuit: number } | null {
  const [, distro, circuit] = /^D([1-9]\d{0,8})-([1-9]\d{0,8})$/.exec(name) ?? [];
  return distro === undefined ? null : { distro: Number(distro), circuit: Number(circuit) };
}

/** Numbers of one distro's circuits while they are given away. */
class FreeNumbers {
  readonly #held: ReadonlySet<number>;
  readonly #most: number;
  readonly #taken = new Set<number>();
  #next = 0;
  #nextHeld = 0;

  constructor(held: readonly number[], most: number | null) {
    this.#held = new Set(held);
    this.#most = most ?? Number.POSITIVE_INFINITY;
  }

  take(number: number): void {
    this.#taken.add(number);
  }

  /** The lowest that was never held, else the lowest that nobody has, else the first beyond the distro's circuits. */
  takeNext(): number {
    do this.#next += 1;
    while (this.#held.has(this.#next) || this.#taken.has(this.#next));
    if (this.#next <= this.#most) return this.#claim(this.#next);
    do this.#nextHeld += 1;
    while (this.#taken.has(this.#nextHeld));
    return this.#claim(this.#nextHeld);
  }

  #claim(number: number): number {
    this.#taken.add(number);
    return number;
  }
}
