import { formatRate, type Rate } from '../../units/format-rate';
import { parseRate } from '../../units/parse-rate';
import { DraftField } from './DraftField';
import type { Reading } from './field-draft';
import { nextRate } from './next-rate';

export interface RateFieldProps {
  readonly label: string;
  readonly value: Rate;
  readonly onCommit: (rate: Rate) => string | null;
  readonly hint?: string | undefined;
  readonly field?: string | undefined;
}

function isSameRate(one: Rate, other: Rate): boolean {
  return one.frames * other.seconds === other.frames * one.seconds;
}

function read(text: string): Reading<Rate> {
  const parsed = parseRate(text);
  return 'rate' in parsed ? { value: parsed.rate } : parsed;
}

/** The short form where it reads back as the same rate, else the fraction. */
function format(rate: Rate): string {
  const short = formatRate(rate);
  const reading = read(short);
  return 'value' in reading && isSameRate(reading.value, rate) ? short : `${rate.frames}/${rate.seconds}`;
}

/** A frame rate, kept as an exact fraction: 23.976 is 24000/1001. Arrow keys go through the usual rates. */
export function RateField(props: RateFieldProps) {
  return (
    <DraftField<Rate>
      {...props}
      format={format}
      read={read}
      explain={({ frames, seconds }) =>
        seconds === 1 ? `${frames} frames a second` : `${frames} frames in ${seconds} s`
      }
      unit="fps"
      inputMode="decimal"
      spin={{
        now: (rate) => rate.frames / rate.seconds,
        least: 1,
        most: 1000,
        step: (rate, direction) => nextRate(rate, direction),
      }}
    />
  );
}
