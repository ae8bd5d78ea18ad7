import type { Panel } from '../../plan/panel';
import type { Picture } from '../../plan/picture';
import type { Chapter } from '../chapter';
import { memo, memoView } from '../memo';
import type { SurfaceSet } from '../surfaces/surface-table';
import { checkPicture } from './check-picture';
import { checkRefresh, type PanelLight } from './check-refresh';
import { computePicture, type PictureInputs } from './compute-picture';
import type { PictureResults } from './picture-result';
import { workPicture } from './work-picture';

/** The chapter of rates and depths with memos of its own: an edit of a panel's light leaves its figures as they are. */
export function pictureChapter(
  onCompute: () => void,
): (picture: Picture, surfaces: SurfaceSet, panels: readonly Panel[]) => Chapter<PictureResults> {
  const lights = memoView(({ id, name, light }: Panel): PanelLight => ({ id, name, light }));
  const chapter = memo((inputs: PictureInputs): Chapter<PictureResults> => {
    onCompute();
    const results = computePicture(inputs);
    return { results, checks: checkPicture(inputs), working: workPicture(inputs, results) };
  });
  const withRefresh = memo(
    (own: Chapter<PictureResults>, surfaces: SurfaceSet, panels: readonly PanelLight[]): Chapter<PictureResults> => ({
      ...own,
      checks: [...own.checks, ...checkRefresh(surfaces, own.results, panels)],
    }),
  );
  return (picture, surfaces, panels) => withRefresh(chapter({ picture, surfaces }), surfaces, lights(panels));
}
