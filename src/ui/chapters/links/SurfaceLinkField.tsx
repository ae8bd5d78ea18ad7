import { videoLinks } from '../../../calc/tables/video-links';
import { AddButton } from '../../bench/ListButtons';
import { PlanItem } from '../../bench/PlanFields';
import { usePlan } from '../../state/use-plan';

/** The link of one surface where it is fed otherwise than the stage; or a way to give it that. */
export function SurfaceLinkField({ surfaceId, name }: { readonly surfaceId: string; readonly name: string }) {
  const index = usePlan((plan) => plan.feed.bySurface.findIndex((entry) => entry.surfaceId === surfaceId));
  const count = usePlan((plan) => plan.feed.bySurface.length);
  const zonesANode = usePlan((plan) => plan.feed.zonesANode);
  const list = ['feed', 'bySurface'] as const;
  if (index >= 0) {
    return (
      <PlanItem path={[...list, index, 'linkId']} label={`Link of ${name}`} items={videoLinks} absent="as the stage" />
    );
  }
  return (
    <AddButton
      list={list}
      index={count}
      value={{ surfaceId, zonesANode, linkId: null, canvas: null }}
      label={`link of ${name}`}
    >
      Give {name} its own link
    </AddButton>
  );
}
