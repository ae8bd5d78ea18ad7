import type { HeldNames } from '../../plan/held-names';
import type { Chapter } from '../chapter';
import { memo } from '../memo';
import type { AnchorGround } from '../runs/locate-anchor';
import type { SurfaceSet } from '../surfaces/surface-table';
import type { ZonesResults } from '../zones/zone-result';
import { holdProcessors } from './hold-processors';
import { type LocatedNames, locateNames } from './locate-names';

/** Names that a plan holds, with memos of their own. A plan that holds none is evaluated as if there were no such thing. */
export function holdNames() {
  const locate = memo(locateNames);
  const hold = memo((zones: Chapter<ZonesResults>, held: LocatedNames, surfaces: SurfaceSet): Chapter<ZonesResults> => {
    return { ...zones, results: holdProcessors(zones.results, held, surfaces) };
  });
  return {
    locate: (names: HeldNames | null, ground: AnchorGround): LocatedNames | null =>
      names === null ? null : locate(names, ground),
    /** The chapter of zones with its processors under the numbers that are held. */
    number: (zones: Chapter<ZonesResults>, held: LocatedNames | null, surfaces: SurfaceSet): Chapter<ZonesResults> =>
      held === null ? zones : hold(zones, held, surfaces),
  };
}
