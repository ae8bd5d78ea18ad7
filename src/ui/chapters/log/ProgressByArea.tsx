import type { AreaProgress, StepProgress } from '../../../calc/log/compute-progress';
import { progressOf } from '../../state/log-of';
import { useEvaluation } from '../../state/use-evaluation';
import { useLog } from '../../state/use-log';
import { useFormat } from '../../widgets/use-format';
import { kindNouns, stepWords } from './step-words';

/** How far the stage, each surface and each zone are: by bars, by counts and by the share of panels. */
export function ProgressByArea() {
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const zones = useEvaluation((evaluation) => evaluation.zones.results.zones);
  const areas = progressOf(surfaces, zones, useLog());
  return (
    <ul className="areas" aria-label="Progress by area">
      {areas.map((area) => (
        <Area key={`${area.kind} ${area.surfaceId} ${area.name}`} area={area} />
      ))}
    </ul>
  );
}

const headings = { stage: 'The stage', surface: '', zone: '' } as const;

function Area({ area }: { readonly area: AreaProgress }) {
  const format = useFormat();
  const heading = headings[area.kind] || area.name.charAt(0).toUpperCase() + area.name.slice(1);
  return (
    <li className={`area is-${area.kind}`}>
      <h3>
        {heading} <span className="quiet">{format(area.panels, 'count')} panels</span>
      </h3>
      <ul>
        {area.steps.map((step) => (
          <StepBar key={step.step} progress={step} />
        ))}
      </ul>
    </li>
  );
}

function StepBar({ progress }: { readonly progress: StepProgress }) {
  const format = useFormat();
  const { step, of, done, total, share } = progress;
  return (
    <li className="step-bar">
      <b>{stepWords[step]}</b>
      <div className="step-track" aria-hidden="true">
        <i style={{ width: `${(share ?? 0) * 100}%` }} />
      </div>
      <span>
        {done} of {total} {kindNouns[of]}
      </span>
      <small>{share === null ? 'no panels' : `${format(share, 'share')} of panels`}</small>
    </li>
  );
}
