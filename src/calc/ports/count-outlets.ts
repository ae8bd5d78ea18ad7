import type { Breakout } from '../../plan/breakout';
import type { Processor } from '../../plan/processor';
import { divided, fractionOf, wholePart } from './fraction';
import type { SurfacePorts } from './port-result';

type Outlets = Pick<SurfacePorts, 'portsAProcessor' | 'portsABreakout' | 'breakoutsAProcessor'>;

/** Ports of one processor and of one breakout: a trunk carries no more ports than its rate holds lines. No breakout of that id: none. */
export function countOutlets(processor: Processor, breakouts: readonly Breakout[]): Outlets {
  const { outlets } = processor;
  if (outlets.kind === 'direct') {
    return { portsAProcessor: outlets.ports, portsABreakout: outlets.ports, breakoutsAProcessor: 0 };
  }
  const box = breakouts.find(({ id }) => id === outlets.breakoutId);
  if (box === undefined) return { portsAProcessor: 0, portsABreakout: 0, breakoutsAProcessor: outlets.most };
  const onTrunk = wholePart(divided(fractionOf(box.trunkMbps), fractionOf(processor.port.lineMbps)));
  const portsABreakout = Math.min(box.ports, onTrunk);
  return { portsAProcessor: portsABreakout * outlets.most, portsABreakout, breakoutsAProcessor: outlets.most };
}
