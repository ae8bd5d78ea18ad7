import { zonePanels } from '../calc/zones/zone-of-panels';
import type { StageParts } from './stage-parts';

/** What the panels' light colours tell apart; texts say the same, so that a black and white print loses nothing. */
export type Tint = 'none' | 'port' | 'processor' | 'circuit' | 'leg';

/** There are so many tints; numbers run from 0. */
export const tintCount = 6;
export const noTint = 255;

/** Tint of each leg, or pair of legs. */
export const legTints = { L1: 0, L2: 2, L3: 4, 'L1-L2': 0, 'L2-L3': 2, 'L3-L1': 4 } as const;

type TintParts = Pick<StageParts, 'surfaces' | 'zones' | 'runs' | 'power'>;

/** What was tinted before: a set of sheets draws the same stage a hundred times. */
const tinted = new WeakMap<TintParts, Map<Tint, Uint8Array>>();

/** Number of the tint of every panel through all surfaces; `noTint` where it belongs to nothing. Nobody may change it. */
export function tintPanels(parts: TintParts, tint: Tint): Uint8Array {
  const before = tinted.get(parts) ?? new Map<Tint, Uint8Array>();
  const tints = before.get(tint) ?? tintAnew(parts, tint);
  tinted.set(parts, before.set(tint, tints));
  return tints;
}

function tintAnew(parts: TintParts, tint: Tint): Uint8Array {
  const tints = new Uint8Array(parts.surfaces.total).fill(noTint);
  if (tint === 'processor') tintZones(parts, tints);
  if (tint === 'port') tintNeighbours(parts, parts.runs.runOf, parts.runs.runs.length, tints);
  if (tint === 'circuit') tintNeighbours(parts, parts.power.circuitOf, parts.power.circuits.length, tints);
  if (tint === 'leg') {
    for (let i = 0; i < tints.length; i++) {
      const circuit = parts.power.circuits[parts.power.circuitOf[i]!];
      if (circuit !== undefined) tints[i] = legTints[circuit.leg];
    }
  }
  return tints;
}

function tintZones({ surfaces, zones }: TintParts, tints: Uint8Array): void {
  surfaces.surfaces.forEach((table, s) => {
    for (const zone of zones) {
      if (zone.surfaceId !== table.surfaceId) continue;
      const tint = (zone.processor - 1) % tintCount;
      for (const local of zonePanels(table, zone)) tints[surfaces.offsets[s]! + local] = tint;
    }
  });
}

/** Gives neighbouring chains different tints where six are enough, taking them in turn. */
function tintNeighbours({ surfaces }: TintParts, chainOf: Int32Array, chains: number, tints: Uint8Array): void {
  const neighbours: Set<number>[] = Array.from({ length: chains }, () => new Set());
  const meet = (a: number, b: number) => {
    if (a === b || a < 0 || b < 0) return;
    neighbours[a]?.add(b);
    neighbours[b]?.add(a);
  };
  surfaces.surfaces.forEach((table, s) => {
    const offset = surfaces.offsets[s]!;
    for (let place = 0; place < table.at.length; place++) {
      const local = table.at[place]!;
      if (local < 0) continue;
      const chain = chainOf[offset + local]!;
      const up = (place + 1) % table.rows === 0 ? -1 : table.at[place + 1]!;
      const right = table.at[place + table.rows] ?? -1;
      if (up >= 0) meet(chain, chainOf[offset + up]!);
      if (right >= 0) meet(chain, chainOf[offset + right]!);
    }
  });
  const tintOf = new Uint8Array(chains).fill(noTint);
  for (let chain = 0; chain < chains; chain++) {
    const taken = new Set([...neighbours[chain]!].map((other) => tintOf[other]!));
    let tint = chain % tintCount;
    for (let tried = 0; tried < tintCount && taken.has(tint); tried++) tint = (tint + 1) % tintCount;
    tintOf[chain] = tint;
  }
  for (let i = 0; i < tints.length; i++) {
    const chain = chainOf[i]!;
    if (chain >= 0) tints[i] = tintOf[chain] ?? noTint;
  }
}
