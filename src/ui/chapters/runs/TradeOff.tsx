import type { WayFigures } from '../../../calc/runs/run-result';
import { useFormat } from '../../widgets/use-format';
import { type Mark, placeMarks } from './place-marks';

const wide = 520;
const high = 170;
const frame = { left: 58, right: 14, top: 14, bottom: 34 };

export interface TradeOffProps {
  readonly ways: readonly WayFigures[];
  readonly portsLeast: number;
  readonly letter: string;
}

/**
 * What one way gives for another: ports across, what stays free on the fullest port upwards, larger marks for more figures to
 * learn. The table above says the same in figures, and is where a way is taken.
 */
export function TradeOff({ ways, portsLeast, letter }: TradeOffProps) {
  const format = useFormat();
  if (ways.length < 2) return null;
  const { marks, least, across, upwards } = placeMarks(ways, portsLeast, { wide, high, frame });
  const floor = high - frame.bottom;
  return (
    <figure className="trade-off">
      <svg
        viewBox={`0 0 ${wide} ${high}`}
        role="img"
        aria-label={`${letter}: ways of wiring by ports and by what stays free on the fullest port. ${said(marks)}`}
      >
        <path className="axis" d={`M${frame.left} ${frame.top}V${floor}H${wide - frame.right}`} />
        {across.map(({ at, value }) => (
          <text key={value} className="scale" x={at} y={floor + 14} textAnchor="middle">
            {value}
          </text>
        ))}
        {upwards.map(({ at, value }) => (
          <text key={value} className="scale" x={frame.left - 6} y={at + 4} textAnchor="end">
            {format(value, 'share')}
          </text>
        ))}
        <path className="least" d={`M${least} ${frame.top}V${floor}`} />
        <text className="scale" x={least + 4} y={frame.top + 8}>
          least possible
        </text>
        {marks.map(({ key, x, y, radius, isChosen, title }) => (
          <circle key={key} className={isChosen ? 'chosen' : undefined} cx={x} cy={y} r={radius}>
            <title>{title}</title>
          </circle>
        ))}
        <text className="scale" x={(frame.left + wide - frame.right) / 2} y={high - 4} textAnchor="middle">
          ports
        </text>
      </svg>
      <figcaption>
        Free on the fullest port against ports; a larger mark has more figures to learn, the filled one is in use.
      </figcaption>
    </figure>
  );
}

function said(marks: readonly Mark[]): string {
  return marks.find(({ isChosen }) => isChosen)?.title ?? '';
}
