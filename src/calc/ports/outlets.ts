import type { SurfacePorts } from './port-result';

/** What a processor's ports hang on, as far as returns need it. */
export type PortOutlets = Pick<SurfacePorts, 'portsAProcessor' | 'portsABreakout' | 'breakoutsAProcessor' | 'returns'>;

/** Runs that so many breakouts take when every run goes back to another one: in pairs, an odd one shared among the last three. */
function runsOnBreakouts(breakouts: number, portsABreakout: number): number {
  if (breakouts < 2) return 0;
  if (breakouts % 2 === 0) return (breakouts / 2) * portsABreakout;
  return ((breakouts - 3) / 2) * portsABreakout + 3 * Math.floor(portsABreakout / 2);
}

/** Ports that one run takes: its own, and the one that it returns to. */
export function portsARun({ returns }: Pick<SurfacePorts, 'returns'>): 1 | 2 {
  return returns === 'none' ? 1 : 2;
}

/** Most runs of a zone, returns counted in; a processor gives its neighbour as many ports as it borrows. */
export function runsAProcessor(outlets: PortOutlets): number {
  const { returns, portsAProcessor, portsABreakout, breakoutsAProcessor } = outlets;
  if (returns === 'none') return portsAProcessor;
  const apart = returns !== 'port' && breakoutsAProcessor >= 2;
  return apart ? runsOnBreakouts(breakoutsAProcessor, portsABreakout) : Math.floor(portsAProcessor / 2);
}

/** Breakouts that so many runs of a zone need, returns counted in; 0 on a processor with direct ports. */
export function breakoutsForRuns(runs: number, outlets: PortOutlets): number {
  const { returns, portsABreakout, breakoutsAProcessor } = outlets;
  if (breakoutsAProcessor === 0 || portsABreakout === 0 || runs === 0) return 0;
  const byPorts = Math.ceil((runs * portsARun(outlets)) / portsABreakout);
  if (returns !== 'breakout' || breakoutsAProcessor < 2) return byPorts;
  let breakouts = Math.max(2, byPorts);
  while (runsOnBreakouts(breakouts, portsABreakout) < runs) breakouts++;
  return breakouts;
}
