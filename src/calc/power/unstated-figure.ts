import type { Check } from '../chapter';
import type { PanelPower } from '../panels/panel-views';

/** An offer in place of a check for which the sheets of some panels lack a figure: nobody stated it, so nothing passes. */
export function unstatedFigure(
  about: Pick<Check, 'id' | 'chapter' | 'unit'>,
  panels: readonly PanelPower[],
  sentence: string,
): Check {
  return {
    ...about,
    severity: 'offer',
    measured: null,
    limit: null,
    where: panels.slice(0, 50).map((panel) => ({ kind: 'item', name: panel.name })),
    sentence,
  };
}
