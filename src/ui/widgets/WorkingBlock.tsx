import { prettifyExpression } from './prettify-expression';

export interface WorkingLine {
  readonly symbol: string;
  readonly expression: string;
  readonly numbers: Readonly<Record<string, number>>;
  /** The value with its unit, already written out. */
  readonly value: string;
  /** Where the formula or figure comes from. */
  readonly source: string;
}

export interface WorkingBlockProps {
  /** The headline figure that the lines lead to. */
  readonly figure: string;
  readonly lines: readonly WorkingLine[];
  readonly writeNumber: (value: number) => string;
}

/** How a figure comes about: each line as formula, with this plan's numbers in it, and where it comes from. */
export function WorkingBlock({ figure, lines, writeNumber }: WorkingBlockProps) {
  const sources = [...new Set(lines.map((line) => line.source))];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reached by keyboard.
    <section className="work" aria-label={`Working of ${figure}`} tabIndex={0}>
      <div className="work-figure">{figure}</div>
      {lines.map((line) => {
        const pretty = prettifyExpression(line.expression, line.numbers, writeNumber);
        const same = pretty.numbers === line.value;
        return (
          <div key={`${line.symbol} ${line.expression}`} className="work-step">
            {line.symbol}
            {pretty.names !== null && pretty.names !== line.symbol && (
              <span className="work-words"> = {pretty.names}</span>
            )}{' '}
            = {same ? line.value : `${pretty.numbers} = ${line.value}`}
          </div>
        );
      })}
      {sources.map((source) => (
        <div key={source} className="work-source">
          {source}
        </div>
      ))}
    </section>
  );
}
