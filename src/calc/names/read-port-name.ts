import type { PortOutlets } from '../ports/outlets';

/** What the tag of a port says. */
export interface NamedPort {
  readonly processor: number;
  /** From 0; null on a processor with direct ports. */
  readonly breakout: number | null;
  /** From 1, on its breakout. */
  readonly port: number;
}

/** Reads the tag of a port ('3B-04', '3-04'), the other way round of `portName`; null for a text that is none. */
export function readPortName(name: string): NamedPort | null {
  const [, processor, letters, port] = /^([1-9]\d{0,8})([A-Z]{0,4})-(\d{2,9})$/.exec(name) ?? [];
  if (processor === undefined || letters === undefined || Number(port) < 1) return null;
  const index = Array.from(letters).reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return { processor: Number(processor), breakout: letters === '' ? null : index, port: Number(port) };
}

/** Number of a port through the breakouts of a processor, from 0; null where a processor has no such port. */
export function slotOfPort({ breakout, port }: NamedPort, outlets: PortOutlets): number | null {
  const { breakoutsAProcessor, portsABreakout, portsAProcessor } = outlets;
  const onBreakouts = breakoutsAProcessor > 0 && portsABreakout > 0;
  if (onBreakouts !== (breakout !== null)) return null;
  if (breakout === null) return port <= portsAProcessor ? port - 1 : null;
  return breakout < breakoutsAProcessor && port <= portsABreakout ? breakout * portsABreakout + port - 1 : null;
}
