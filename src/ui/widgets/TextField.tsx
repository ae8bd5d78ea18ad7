import { DraftField } from './DraftField';

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onCommit: (value: string) => string | null;
  readonly most?: number;
  readonly lines?: 'one' | 'many';
  readonly placeholder?: string;
  readonly hint?: string | undefined;
  readonly field?: string | undefined;
  readonly isDisabled?: boolean;
}

/** Free words, on one line or on many. */
export function TextField({ most = 200, lines = 'one', ...rest }: TextFieldProps) {
  return (
    <DraftField<string>
      {...rest}
      lines={lines}
      format={(value) => value}
      read={(text) => (text.length > most ? { refused: `At most ${most} letters have room here.` } : { value: text })}
      look={lines === 'many' ? 'words wide' : 'words long'}
    />
  );
}
