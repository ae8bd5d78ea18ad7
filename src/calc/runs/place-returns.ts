import { breakoutsForRuns, type PortOutlets } from '../ports/outlets';

/** Ports of one run as slots of a processor, numbered from 0 through its breakouts. */
export interface RunSlots {
  readonly out: number;
  /** Where it returns to: the place of that zone in the list, and its slot; null without a return. */
  readonly back: { readonly zone: number; readonly slot: number } | null;
}

/**
 * Slots of every run of a surface's zones, given how many runs each zone has. A return on the same processor takes the next
 * port; on another breakout the same number of the breakout paired with it; on another processor a port of the neighbour, zones
 * paired from the first on and the last three in a round where their number is odd. Where there is no second processor another
 * breakout serves, where there is none the next port.
 */
export function placeReturns(runsOfZones: readonly number[], outlets: PortOutlets): RunSlots[][] {
  const { returns } = outlets;
  if (returns === 'none') return each(runsOfZones, (_, run) => ({ out: run, back: null }));
  if (returns === 'processor' && runsOfZones.length > 1) return onNeighbours(runsOfZones, outlets);
  if (returns === 'port' || outlets.breakoutsAProcessor < 2) {
    return each(runsOfZones, (zone, run) => ({ out: 2 * run, back: { zone, slot: 2 * run + 1 } }));
  }
  return each(runsOfZones, (zone, run, runs) => {
    const [out, slot] = onPairedBreakouts(run, runs, outlets);
    return { out, back: { zone, slot } };
  });
}

function each(
  runsOfZones: readonly number[],
  slotsOf: (zone: number, run: number, runs: number) => RunSlots,
): RunSlots[][] {
  return runsOfZones.map((runs, zone) => Array.from({ length: runs }, (_, run) => slotsOf(zone, run, runs)));
}

/** Breakouts A and B, C and D, ..: out on the first, back on the second; the last three share where their number is odd. */
function onPairedBreakouts(run: number, runs: number, outlets: PortOutlets): readonly [number, number] {
  const ports = outlets.portsABreakout;
  const breakouts = breakoutsForRuns(runs, { ...outlets, returns: 'breakout' });
  const pairs = breakouts % 2 === 0 ? breakouts / 2 : (breakouts - 3) / 2;
  if (run < pairs * ports || breakouts % 2 === 0) {
    const out = 2 * Math.floor(run / ports) * ports + (run % ports);
    return [out, out + ports];
  }
  const half = Math.floor(ports / 2);
  const rest = run - pairs * ports;
  const turn = Math.floor(rest / half);
  const first = 2 * pairs;
  return [
    (first + (turn % 3)) * ports + (rest % half),
    (first + ((turn + 1) % 3)) * ports + (ports - half) + (rest % half),
  ];
}

/** The zone whose processor takes the returns of another. */
function neighbourOf(zone: number, zones: number): number {
  if (zones % 2 === 1 && zone >= zones - 3) return zone === zones - 1 ? zones - 3 : zone + 1;
  return zone % 2 === 0 ? zone + 1 : zone - 1;
}

function onNeighbours(runsOfZones: readonly number[], outlets: PortOutlets): RunSlots[][] {
  const zones = runsOfZones.length;
  const guestsOf = runsOfZones.map(() => 0);
  runsOfZones.forEach((runs, zone) => {
    guestsOf[neighbourOf(zone, zones)]! += runs;
  });
  const firstGuest = runsOfZones.map((runs, zone) => guestSlot(runs, guestsOf[zone]!, outlets));
  return each(runsOfZones, (zone, run) => {
    const neighbour = neighbourOf(zone, zones);
    return { out: run, back: { zone: neighbour, slot: firstGuest[neighbour]! + run } };
  });
}

/** Guests begin on a breakout of their own where that takes no more of them, else right behind the processor's own runs. */
function guestSlot(runs: number, guests: number, { portsABreakout, breakoutsAProcessor }: PortOutlets): number {
  if (breakoutsAProcessor === 0 || portsABreakout === 0) return runs;
  const breakouts = Math.ceil((runs + guests) / portsABreakout);
  const apart = Math.ceil(runs / portsABreakout) * portsABreakout;
  return apart + guests <= breakouts * portsABreakout ? apart : runs;
}
