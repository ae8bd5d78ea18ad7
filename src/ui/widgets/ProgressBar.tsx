import { useId } from 'react';
import { Button } from './Button';

export interface ProgressBarProps {
  readonly label: string;
  /** Part done, 0 to 1; null where it cannot be told. */
  readonly share: number | null;
  readonly onStop: () => void;
}

/** Long work: how far it is, and a way to stop it. */
export function ProgressBar({ label, share, onStop }: ProgressBarProps) {
  const id = useId();
  const percent = share === null ? null : Math.round(share * 100);
  const known = percent === null ? {} : { 'aria-valuenow': percent };
  return (
    <div className="progress">
      <span id={id}>
        {label}
        {percent === null ? '' : `, ${percent} %`}
      </span>
      <div role="progressbar" aria-labelledby={id} aria-valuemin={0} aria-valuemax={100} {...known}>
        <div className="progress-track">
          <i style={{ width: `${percent ?? 35}%` }} />
        </div>
      </div>
      <Button small onClick={onStop}>
        Stop
      </Button>
    </div>
  );
}
