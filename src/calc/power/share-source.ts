import type { Source } from '../chapter';
import { continuousLoad } from '../tables/continuous-load';

/** The usable share is the plan's; where it is that of NEC practice, which the default is everywhere, the line says so. */
export function shareSource(share: number): Source {
  const nec = `; ${share} is NEC practice for a load that lasts (${continuousLoad.source}), elsewhere common practice`;
  return { kind: 'given', text: `rating and share as planned${share === continuousLoad.usableShare ? nec : ''}` };
}
