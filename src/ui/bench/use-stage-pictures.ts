import { useMemo } from 'react';
import { mapPixels } from '../../calc/outputs/map-pixels';
import { stageMeshes } from '../../calc/outputs/stage-meshes';
import type { OutputsAsked } from '../../files/make-outputs';
import type { StagePictures } from '../drawings/stage/TestPictures';
import { useStagePicture } from '../state/stage-picture';
import { useBench } from '../state/use-bench';
import { useEvaluation } from '../state/use-evaluation';
import { useSweep } from '../state/use-sweep';

/** No side longer than 4096, which every graphics card takes, and together no more than 128 MB of the card's memory. */
const onTheWall: OutputsAsked = { make: 'screen-pictures', mostSide: 4096, mostPixels: 32_000_000 };

/** Test pictures for the model of the stage, as they are painted in the worker; null while they are not wanted or
 *  nobody looks. */
export function useStagePictures(isInView: boolean): StagePictures | null {
  const isShown = useStagePicture() && isInView;
  const plan = useBench((state) => state.plan);
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const zones = useEvaluation((evaluation) => evaluation.zones.results.zones);
  const fed = useEvaluation((evaluation) => evaluation.nodes.results);
  const { items, isCurrent } = useSweep(plan, 'outputs', isShown ? onTheWall : undefined);
  return useMemo(() => {
    if (!isShown) return null;
    const pictures = isCurrent ? items.flatMap(({ picture }) => (picture === undefined ? [] : [picture])) : [];
    return { meshes: stageMeshes(surfaces, mapPixels(surfaces, zones, fed), fed), pictures };
  }, [isShown, isCurrent, items, surfaces, zones, fed]);
}
