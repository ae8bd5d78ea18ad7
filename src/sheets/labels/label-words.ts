import { printableText } from '../pages/printable-text';
import { kindWords, type LabelledCable } from './labelled-cable';

/** What stands on one label, in printable signs. */
export interface LabelWords {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  /** What kind of cable of which length class. */
  readonly cable: string;
  /** The end on which the label sticks. */
  readonly end: 'from' | 'to';
  /** The far end alone, for a label without room for more: 'to A C38 R1'. */
  readonly far: string;
}

export function labelWords(
  { kind, name, from, to, lengthClass, count }: LabelledCable,
  end: 'from' | 'to',
): LabelWords {
  const { title } = kindWords[kind];
  const pieces = count > 1 ? `${count} × ${lengthClass}` : lengthClass;
  const saysKind = pieces.toLowerCase().startsWith(title.toLowerCase());
  return {
    name: printableText(name, 'strong'),
    from: printableText(`from ${from.words}`, 'sans'),
    to: printableText(`to ${to.words}`, 'sans'),
    cable: printableText(saysKind ? pieces : `${title}: ${pieces}`, 'sans'),
    end,
    far: printableText(end === 'from' ? `to ${to.short}` : `from ${from.short}`, 'sans'),
  };
}
