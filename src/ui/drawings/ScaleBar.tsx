import type { Format } from '../../sheets/format';
import { scaleBarMm } from '../../sheets/scale-bar';
import type { StageParts } from '../../sheets/stage-parts';

interface ScaleBarProps {
  readonly scale: number;
  readonly lengths: StageParts['lengths'];
  readonly format: Format;
}

/** A bar of a round length at the drawing's scale, its half marked. */
export function ScaleBar({ scale, lengths, format }: ScaleBarProps) {
  const mm = scaleBarMm(scale, 150, lengths);
  const width = Math.round(mm * scale);
  const text = format(mm, 'mm');
  return (
    <span className="scale-bar" role="img" aria-label={`Scale bar of ${text}`}>
      <svg width={width + 2} height={10} aria-hidden="true">
        <path
          className="sheet-line pen-ink weight-medium dash-solid"
          d={`M1 5H${width + 1}M1 1V9M${width / 2 + 1} 2V8M${width + 1} 1V9`}
        />
      </svg>
      {text}
    </span>
  );
}
