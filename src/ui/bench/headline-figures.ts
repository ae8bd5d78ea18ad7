import type { Step } from '../../calc/chapter';
import type { NamedFigure } from '../widgets/FigureList';
import type { Format } from '../widgets/use-format';

/** The headline figures that a chapter's working leads to: the value of each figure's last step. */
export function headlineFigures(steps: readonly Step[], format: Format): readonly NamedFigure[] {
  const last = new Map<string, Step>();
  for (const step of steps) last.set(step.figure, step);
  return [...last].map(([name, step]) => ({ name, value: format(step.value, step.unit) }));
}
