import type { Change } from '../../calc/compare/change';
import type { DisplayOptions } from '../../units/display-options';
import type { Room } from './crew-part';

/** What became of the plan since it was last given to the crew. */
export interface ChangesSince {
  /** Name of that revision, and the day it was issued. */
  readonly name: string;
  readonly issuedOn: string;
  /** Of its money. */
  readonly currency: string;
  readonly changes: readonly Change[];
  /** By panel number of the plan as it is now, 1 where it is built or wired otherwise. */
  readonly panels: Uint8Array;
}

export interface CrewSetOptions {
  readonly display: DisplayOptions;
  /** Room for a drawing on a page, lying or upright, of the paper that the set is made for: large surfaces are cut by it. */
  readonly rooms: readonly [Room, ...Room[]];
  /** Link to a copy of the plan, for the code on the cover; null: the plan is too large for one, or nobody wants it. */
  readonly url: string | null;
  /** null: no revision was issued before. */
  readonly since: ChangesSince | null;
}
