import { chooseWiring } from '../../../../src/calc/runs/search/choose-wiring';
import type { Optimum, SolvedCase } from './wiring-optima';
import { gridOfCase, limitsOfCase } from './zone-case';

export interface HeldZones {
  /** Zones on which the search, fewest ports first, is not as good as the integer program, or its bound above the optimum. */
  readonly worse: readonly string[];
  /** Zones whose optimum the bound proves. */
  readonly proved: number;
}

export function worseThanProgram(zones: readonly SolvedCase[]): HeldZones {
  const worse: string[] = [];
  let proved = 0;
  zones.forEach((zone, at) => {
    const terms = { priority: 'fewest-ports', portsThere: 1000 } as const;
    const { chosen, least } = chooseWiring(gridOfCase(zone), limitsOfCase(zone), terms);
    const found: Optimum = { high: chosen.entriesOutOfReach, ports: chosen.ports };
    const isAlike = found.high === zone.best.high && found.ports === zone.best.ports;
    if (isAlike && least === zone.best.ports) proved++;
    if (isAlike && least <= zone.best.ports) return;
    worse.push(`zone ${at}, ${zone.columns} columns wide: ${JSON.stringify({ found, best: zone.best, least })}`);
  });
  return { worse, proved };
}
