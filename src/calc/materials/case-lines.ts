import type { PanelPurchase } from '../panels/panel-views';
import type { MaterialLine } from './material-result';

/** Cases that panels and their spares travel in. They come with the panels, so their price is the panels'. */
export function caseLines(panelLines: readonly MaterialLine[], panels: readonly PanelPurchase[]): MaterialLine[] {
  return panelLines.flatMap((line) => {
    const panel = panels.find(({ id }) => id === line.itemId);
    if (panel === undefined) return [];
    const { perCase, caseMassKg } = panel.purchase;
    const needed = Math.ceil((line.needed + line.spare) / perCase);
    return [
      {
        itemId: `${panel.id}/case`,
        group: 'cases',
        name: `Case, ${panel.name}`,
        needed,
        spare: 0,
        owned: null,
        toGet: Math.ceil(line.toGet / perCase),
        obtainable: null,
        massKgEach: caseMassKg,
        massKg: needed * caseMassKg,
        priceEach: 0,
        price: 0,
        leadDays: line.leadDays,
        countedAs: `panels and spares, ${perCase} to a case; priced with the panels`,
      },
    ];
  });
}
