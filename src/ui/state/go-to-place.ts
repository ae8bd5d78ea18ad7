import type { Place } from '../../calc/chapter';
import type { BenchActions, BenchState } from './bench-state';
import { pageOfField } from './page-of-field';
import { selectShownEvaluation } from './selectors';

/** Goes to the place that a check concerns: picks it in the drawing, or opens the page and the field that set it. */
export function goToPlace(place: Place, state: BenchState, actions: BenchActions): void {
  switch (place.kind) {
    case 'field':
      actions.goTo(pageOfField(place.name) ?? state.page, place.name);
      return;
    case 'item':
      actions.goTo('panels');
      return;
    case 'surface': {
      const surfaces = selectShownEvaluation(state)?.surfaces.surfaces ?? [];
      const surface = surfaces.find((one) => [one.letter, one.name, one.surfaceId].includes(place.name));
      if (surface) actions.setDrawing({ surfaceId: surface.surfaceId });
      return;
    }
    case 'distro':
    case 'leg':
      actions.goTo('power');
      actions.seek(place.name);
      return;
    default:
      actions.seek(place.name);
  }
}
