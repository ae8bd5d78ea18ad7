import type { DisplayOptions } from '../../units/display-options';
import type { Room } from './crew-part';

export interface CrewSetOptions {
  readonly display: DisplayOptions;
  /** Room for a drawing on a page of the paper that the set is made for: long surfaces are cut into strips by it. */
  readonly room: Room;
  /** Link to a copy of the plan, for the code on the cover; null: the plan is too large for one, or nobody wants it. */
  readonly url: string | null;
}
