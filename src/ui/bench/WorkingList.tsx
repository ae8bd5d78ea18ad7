import type { Step } from '../../calc/chapter';
import { formatNumber } from '../../units/format-number';
import { useDisplayOptions } from '../widgets/display-context';
import { useFormat } from '../widgets/use-format';
import { WorkingBlock } from '../widgets/WorkingBlock';
import { sourceText } from './source-text';

/** Steps in the order of their headline figures. */
function byFigure(steps: readonly Step[]): readonly (readonly [figure: string, steps: readonly Step[]])[] {
  const groups = new Map<string, Step[]>();
  for (const step of steps) {
    const group = groups.get(step.figure);
    if (group) group.push(step);
    else groups.set(step.figure, [step]);
  }
  return [...groups];
}

/** The working of a chapter: every headline figure with its formulas, this plan's numbers in them, and their sources. */
export function WorkingList({ steps }: { readonly steps: readonly Step[] }) {
  const format = useFormat();
  const { locale } = useDisplayOptions();
  const writeNumber = (value: number) => formatNumber(value, { least: 0, most: 6 }, locale);
  return byFigure(steps).map(([figure, lines]) => (
    <WorkingBlock
      key={figure}
      figure={figure}
      writeNumber={writeNumber}
      lines={lines.map((step) => ({ ...step, value: format(step.value, step.unit), source: sourceText(step.source) }))}
    />
  ));
}
