import type { RateCell } from '../../../calc/rates/rate-table';
import { modeWords } from '../../bench/mode-words';
import { StatusGlyph } from '../../widgets/StatusGlyph';

export interface RateButtonProps {
  readonly cell: RateCell;
  /** Id of the sentence that says what stands against it, and the sentence. */
  readonly describedBy?: string;
  readonly reason?: string;
  /** False while its figures are those of an earlier plan. */
  readonly isCurrent: boolean;
  readonly isPreviewed: boolean;
  /** Letters of the surfaces that run otherwise than the stage. */
  readonly apart: readonly string[];
  readonly onPreview: () => void;
}

function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : one.endsWith('s') ? 'es' : 's'}`;
}

/** One rate and depth: fits or not, whether panels refresh in step, panels a port, ports, processors. */
export function RateButton({ cell, describedBy, reason, isCurrent, isPreviewed, apart, onPreview }: RateButtonProps) {
  const { mode, panelsAPort, ports, processors, stop, refresh, current } = cell;
  const status = stop !== null ? 'stop' : refresh !== null ? 'watch' : 'pass';
  const fits = { stop: 'does not fit', watch: 'fits, refresh is no whole multiple', pass: 'fits' }[status];
  const now = apart.length === 0 ? 'runs now' : `runs now, not ${apart.join(', ')}`;
  return (
    <button
      type="button"
      className="rate-cell"
      disabled={!isCurrent}
      aria-pressed={isPreviewed}
      aria-label={`${modeWords(mode)}: ${counted(panelsAPort ?? 0, 'panel')} a port, ${counted(ports, 'port')}, ${counted(processors, 'processor')}, ${fits}${current ? `, ${now}` : ''}`}
      {...(describedBy === undefined ? {} : { 'aria-describedby': describedBy })}
      {...(reason === undefined ? {} : { title: reason })}
      onClick={onPreview}
    >
      <span className="rate-head">
        <StatusGlyph status={status} silent />
        <span>{panelsAPort ?? 0} a port</span>
      </span>
      <span className="rate-more">{counted(ports, 'port')}</span>
      <span className="rate-more">{counted(processors, 'processor')}</span>
      {current && <span className="rate-now">{now}</span>}
    </button>
  );
}
