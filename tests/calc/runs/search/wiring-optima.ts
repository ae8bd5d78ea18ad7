import { readFileSync } from 'node:fs';
import type { LegacyHighs as Highs } from 'highs';
import { createRandomBits } from '../../../../src/calc/runs/search/random-bits';
import { holdings, leastByProgram } from './least-by-program';
import { type CaseSize, randomCase } from './random-case';
import { gridOfCase, limitsOfCase, type ZoneCase } from './zone-case';

/** Fewest ends above reach, and fewest ports with no more of them. */
export interface Optimum {
  readonly high: number;
  readonly ports: number;
}

export interface SolvedCase extends ZoneCase {
  readonly best: Optimum;
  /** Of a zone whose runs return: the best where the entries alone obey reach. */
  readonly entriesAlone?: Optimum;
}

/** Zones drawn one after the other from a seed; those of more than `setsMost` sets of panels are passed over. */
export interface CaseGroup extends CaseSize {
  readonly seed: number;
  readonly many: number;
  readonly setsMost: number;
}

export const caseGroups: readonly CaseGroup[] = [
  { seed: 3, many: 300, columns: [2, 7], rows: [2, 7], panelsAPort: [2, 9], setsMost: 12_000 },
  { seed: 13, many: 80, columns: [6, 8], rows: [6, 8], panelsAPort: [4, 8], setsMost: 12_000 },
  { seed: 5, many: 40, columns: [7, 9], rows: [5, 5], panelsAPort: [3, 6], setsMost: 8000 },
  { seed: 11, many: 20, columns: [9, 11], rows: [9, 10], panelsAPort: [3, 4], setsMost: 6000 },
  { seed: 101, many: 40, columns: [13, 15], rows: [13, 15], panelsAPort: [2, 5], setsMost: 6000 },
];

export const optimaPath = new URL('../../../../fixtures/reference/wiring-optima.json', import.meta.url);

export interface WiringOptima {
  readonly groups: readonly (CaseGroup & { readonly zones: readonly SolvedCase[] })[];
}

export const readOptima = (): WiringOptima => JSON.parse(readFileSync(optimaPath, 'utf8'));

export function casesOfGroup(group: CaseGroup): ZoneCase[] {
  const randomBits = createRandomBits(group.seed);
  const cases: ZoneCase[] = [];
  while (cases.length < group.many) {
    const zone = randomCase(randomBits, group);
    if (holdings(gridOfCase(zone), limitsOfCase(zone)).length <= group.setsMost) cases.push(zone);
  }
  return cases;
}

export function solveCase(highs: Highs, zone: ZoneCase): SolvedCase {
  const grid = gridOfCase(zone);
  const limits = limitsOfCase(zone);
  const best = leastByProgram(highs, grid, limits);
  if (!zone.returns) return { ...zone, best };
  return { ...zone, best, entriesAlone: leastByProgram(highs, grid, { ...limits, lastObeysReach: false }) };
}

/** The text of the file of optima, one zone a line; some ten minutes' work. */
export function writeOptima(highs: Highs): string {
  const head = {
    title: 'Fewest ends above reach, then fewest ports, of random zones: proved optima of an integer program',
    source: 'computed by HiGHS through the highs package 1.15.3',
    howKnown:
      'set partitioning over every set of panels that a chain of neighbours covers within the port; status Optimal, absolute gap below one port',
    renewal: 'VOUSSOIR_RENEW_OPTIMA=1 npx vitest run tests/calc/runs/search/wiring-optima.test.ts',
  };
  const lines = caseGroups.map((group) => {
    const zones = casesOfGroup(group).map((zone) => `    ${JSON.stringify(solveCase(highs, zone))}`);
    return `  {${JSON.stringify(group).slice(1, -1)}, "zones": [\n${zones.join(',\n')}\n  ]}`;
  });
  return `${JSON.stringify(head, null, 1).slice(0, -2)},\n "groups": [\n${lines.join(',\n')}\n ]\n}\n`;
}
