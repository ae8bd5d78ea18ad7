import { containers } from '../../../calc/links/container';
import { videoLinks } from '../../../calc/tables/video-links';
import type { Feed } from '../../../plan/feed';
import { PlanChoice, PlanItem } from '../../bench/PlanFields';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import type { Choice } from '../../widgets/ChoiceField';
import { SurfaceLinkField } from './SurfaceLinkField';

const timings: readonly Choice<Feed['timing']>[] = [
  { value: 'reduced-2', label: 'CVT, reduced blanking 2' },
  { value: 'reduced-1', label: 'CVT, reduced blanking 1' },
  { value: 'full', label: 'CVT, full blanking' },
  { value: 'cta', label: 'CTA-861 mode of this size' },
  { value: 'container', label: 'Fixed mode that holds it' },
];

const rasters = containers.map(({ id, width, height }) => ({ id, name: `${width} × ${height}` }));

/** How pictures are timed, and over what link they are sent. */
export function LinksGiven() {
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces.surfaces);
  const isFixed = usePlan((plan) => plan.feed.timing === 'container');
  return (
    <>
      <div className="fields">
        <PlanChoice path={['feed', 'timing']} label="Timing" choices={timings} long />
        {isFixed && (
          <PlanItem
            path={['feed', 'containerId']}
            label="Fixed mode"
            items={rasters}
            absent="the least that holds it"
          />
        )}
        <PlanItem path={['feed', 'linkId']} label="Link" items={videoLinks} absent="the least that carries it" />
      </div>
      {surfaces.length > 1 && (
        <div className="fields">
          {surfaces.map(({ surfaceId, letter, name }) => (
            <SurfaceLinkField key={surfaceId} surfaceId={surfaceId} name={`${letter} ${name}`} />
          ))}
        </div>
      )}
    </>
  );
}
