import { counted } from '../../units/counted';
import type { Tick } from '../build-log';
import { mergeTicks } from '../merge-ticks';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface PutTicksArguments {
  readonly ticks: readonly Tick[];
}

/** Takes ticks into the build log: those of a press, or all that another device brings back. Ticks that are there already are not added again. */
export const putTicks: CommandDefinition<'put-ticks', PutTicksArguments> = {
  name: 'put-ticks',
  label(_plan, { ticks }) {
    const [first] = ticks;
    if (ticks.length !== 1 || first === undefined) return `take in ${counted(ticks.length, 'tick')}`;
    const { done, step, of, name } = first;
    return `${done ? 'tick' : 'take back'} '${step}' of ${of} ${name}`;
  },
  apply(plan, { ticks }) {
    const merged = mergeTicks(plan.log.ticks, ticks);
    if (merged === plan.log.ticks) return { plan };
    return admit(plan, { ...plan, log: { ...plan.log, ticks: [...merged] } });
  },
};
