import type { PanelPower } from '../panels/panel-views';
import type { PowerInputs } from './compute-power';
import type { Circuit, PowerResults } from './power-result';

export interface WorstCircuit {
  readonly circuit: Circuit;
  /** Sum of the figure over its panels. */
  readonly sum: number;
}

/** The circuit whose panels have most of a figure of their sheets together; null where no panel on any circuit has any of it. */
export function worstCircuit(
  { panels, surfaces }: Pick<PowerInputs, 'panels' | 'surfaces'>,
  { circuits, order }: Pick<PowerResults, 'circuits' | 'order'>,
  figure: (panel: PanelPower) => number,
): WorstCircuit | null {
  const places = new Map(
    surfaces.surfaces.map((surface, s) => {
      const ofType = surface.types.map(({ panelId }) => {
        const panel = panels.find(({ id }) => id === panelId);
        return panel === undefined ? 0 : figure(panel);
      });
      return [surface.surfaceId, { surface, offset: surfaces.offsets[s]!, ofType }];
    }),
  );
  let worst: WorstCircuit | null = null;
  for (const circuit of circuits) {
    const { surface, offset, ofType } = places.get(circuit.surfaceId)!;
    let sum = 0;
    for (let i = circuit.start; i < circuit.start + circuit.count; i++)
      sum += ofType[surface.type[order[i]! - offset]!]!;
    if (sum > (worst?.sum ?? 0)) worst = { circuit, sum };
  }
  return worst;
}
