import type { Evaluation } from '../../../calc/evaluation';
import { useActions, useBench } from '../../state/use-bench';
import { Button } from '../../widgets/Button';
import { type Format, useFormat } from '../../widgets/use-format';

type Figure = readonly [name: string, write: (evaluation: Evaluation, format: Format) => string];

const figures: readonly Figure[] = [
  [
    'Panels a port',
    ({ headline: { panelsPerPortMin: least, panelsPerPortMax: most } }) =>
      least === null || most === null ? 'none' : least === most ? `${least}` : `${least} to ${most}`,
  ],
  ['Ports', ({ headline }, format) => format(headline.portsUsed, 'count')],
  ['Fullest port', ({ headline }, format) => format(headline.fullestPortShare, 'share', 'none')],
  ['Processors', ({ headline }, format) => format(headline.processors, 'count')],
  ['Stops', ({ checks }, format) => format(checks.filter((c) => c.severity === 'stop').length, 'count')],
];

/** What the stage comes to now and with the change that is previewed; Keep makes it, Drop leaves the plan untouched. */
export function PreviewBar() {
  const preview = useBench((state) => state.preview);
  const now = useBench((state) => state.evaluation);
  const alsoServes = useBench(({ plan }) => plan.picture.alsoServe.length > 0);
  const { keepPreview, endPreview } = useActions();
  const format = useFormat();
  if (!preview) return null;
  return (
    <div className="preview-bar">
      <span role="status">
        Previewing {preview.label}
        {alsoServes ? ', with what else must be served' : ''}; the plan is untouched.
      </span>
      <Button small look="primary" onClick={keepPreview}>
        Keep
      </Button>
      <Button small onClick={endPreview}>
        Drop
      </Button>
      <table className="preview-figures">
        <caption className="unseen">Now and as previewed</caption>
        <thead>
          <tr>
            <td />
            {figures.map(([name]) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <FigureRow title="Now" of={now} format={format} />
          <FigureRow title="Previewed" of={preview.evaluation} format={format} />
        </tbody>
      </table>
    </div>
  );
}

function FigureRow({
  title,
  of,
  format,
}: {
  readonly title: string;
  readonly of: Evaluation | null;
  readonly format: Format;
}) {
  return (
    <tr>
      <th scope="row">{title}</th>
      {figures.map(([name, write]) => (
        <td key={name}>{of ? write(of, format) : '…'}</td>
      ))}
    </tr>
  );
}
