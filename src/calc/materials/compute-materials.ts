import type { Cable, CableKind } from '../../plan/cable';
import type { Stock } from '../../plan/catalogue';
import type { Materials } from '../../plan/materials';
import type { PanelPurchase } from '../panels/panel-views';
import type { ItemCount, SignalItems } from '../signal-items';
import type { SurfaceSet } from '../surfaces/surface-table';
import { countCables, type WiringCounts } from './count-cables';
import type { MaterialLine, MaterialsResults } from './material-result';
import { spareCount } from './spare-count';

/** What materials take of a catalogue item that is neither panel nor cable. */
export interface GearPurchase {
  readonly id: string;
  readonly name: string;
  readonly massKg: number;
  readonly purchase: { readonly price: number | null; readonly leadDays: number | null };
}

export interface MaterialsInputs {
  readonly materials: Materials;
  readonly stock: readonly Stock[];
  readonly surfaces: SurfaceSet;
  readonly panels: readonly PanelPurchase[];
  readonly gear: SignalItems;
  readonly processors: readonly GearPurchase[];
  readonly breakouts: readonly GearPurchase[];
  readonly nodes: readonly GearPurchase[];
  readonly distros: readonly GearPurchase[];
  readonly distroCounts: readonly ItemCount[];
  readonly cables: readonly Cable[];
  readonly wiring: WiringCounts;
}

interface Item {
  readonly itemId: string;
  readonly group: MaterialLine['group'];
  readonly name: string;
  readonly needed: number;
  readonly massKgEach: number;
  readonly priceEach: number | null;
  readonly countedAs: string;
}

const cableNames: Readonly<Record<CableKind, string>> = {
  'home-run': 'Home run',
  'data-jumper': 'Data jumper',
  'power-jumper': 'Power jumper',
  circuit: 'Circuit cable',
  trunk: 'Fibre trunk',
  video: 'Video cable',
};

/** The bill: every countable thing of the plan, counted from what was computed and never typed twice. */
export function computeMaterials(inputs: MaterialsInputs): MaterialsResults {
  const { gear } = inputs;
  const panels = panelItems(inputs).map((item) => lineOf(inputs, item));
  const lines = [
    ...panels,
    ...[
      ...gearItems(gear.processors, inputs.processors, 'signal', 'one a zone'),
      ...gearItems(gear.breakouts, inputs.breakouts, 'signal', 'as the ports of each zone need'),
      ...gearItems(gear.nodes, inputs.nodes, 'signal', 'one a zone'),
      ...gearItems(inputs.distroCounts, inputs.distros, 'power', 'as the circuits need'),
      ...cableItems(inputs),
    ].map((item) => lineOf(inputs, item)),
    ...caseLines(inputs, panels),
  ];
  const total = (figure: (line: MaterialLine) => number) => lines.reduce((sum, line) => sum + figure(line), 0);
  return {
    lines,
    massKg: total((line) => line.massKg),
    priceTotal: total((line) => (line.needed + line.spare) * (line.priceEach ?? 0)),
    priceToGet: total((line) => line.price ?? 0),
    unpriced: lines.filter((line) => line.priceEach === null).length,
  };
}

function panelItems({ surfaces, panels }: MaterialsInputs): readonly Item[] {
  const counts = new Map<string, number>();
  for (const table of surfaces.surfaces) {
    const perType = new Float64Array(table.types.length);
    for (let i = 0; i < table.count; i++) perType[table.type[i]!]! += 1;
    for (const [t, type] of table.types.entries())
      counts.set(type.panelId, (counts.get(type.panelId) ?? 0) + perType[t]!);
  }
  return panels.flatMap(({ id, name, massKg, purchase }): Item[] => {
    const needed = counts.get(id) ?? 0;
    if (needed === 0) return [];
    return [
      {
        itemId: id,
        group: 'panels',
        name,
        needed,
        massKgEach: massKg,
        priceEach: purchase.price,
        countedAs: 'panels of every surface',
      },
    ];
  });
}

function gearItems(
  counts: readonly ItemCount[],
  items: readonly GearPurchase[],
  group: Item['group'],
  countedAs: string,
): readonly Item[] {
  return items.flatMap(({ id, name, massKg, purchase }): Item[] => {
    const needed = counts.find((item) => item.itemId === id)?.count ?? 0;
    return needed === 0
      ? []
      : [{ itemId: id, group, name, needed, massKgEach: massKg, priceEach: purchase.price, countedAs }];
  });
}

function cableItems({ cables, wiring }: MaterialsInputs): readonly Item[] {
  return countCables(wiring).flatMap(({ kind, needed, countedAs }): Item[] => {
    if (needed === 0) return [];
    const own = cables.find((cable) => cable.kind === kind);
    return [
      {
        itemId: own?.id ?? kind,
        group: 'cables',
        name: own?.name ?? cableNames[kind],
        needed,
        massKgEach: own?.massKg ?? 0,
        priceEach: own?.price ?? null,
        countedAs,
      },
    ];
  });
}

/** Cases hold the panels needed and spare; they come with the panels, so they cost nothing here. */
function caseLines({ panels }: MaterialsInputs, lines: readonly MaterialLine[]): readonly MaterialLine[] {
  return lines.flatMap((line): MaterialLine[] => {
    const purchase = panels.find((panel) => panel.id === line.itemId)?.purchase;
    if (!purchase) return [];
    const needed = Math.ceil((line.needed + line.spare) / purchase.perCase);
    return [
      {
        itemId: `${line.itemId}-case`,
        group: 'cases',
        name: `Case of ${purchase.perCase} for ${line.name}`,
        needed,
        spare: 0,
        owned: null,
        toGet: needed,
        obtainable: null,
        massKgEach: purchase.caseMassKg,
        massKg: needed * purchase.caseMassKg,
        priceEach: 0,
        price: 0,
        countedAs: 'panels with spares, by the case; they come with the panels',
      },
    ];
  });
}

function lineOf({ materials, stock }: MaterialsInputs, item: Item): MaterialLine {
  const spare = spareCount(materials, item.itemId, item.needed);
  const entry = stock.find((one) => one.itemId === item.itemId);
  const all = item.needed + spare;
  const toGet = Math.max(0, all - (entry?.owned ?? 0));
  return {
    ...item,
    spare,
    owned: entry?.owned ?? null,
    toGet,
    obtainable: entry?.obtainable ?? null,
    massKg: all * item.massKgEach,
    price: item.priceEach === null ? null : toGet * item.priceEach,
  };
}
