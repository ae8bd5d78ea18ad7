import type { PanelData } from '../panels/panel-views';
import { countDark } from './count-dark';
import { type Culprit, type CulpritKind, culpritKinds } from './culprit';
import { culpritName, whereIs } from './culprit-words';
import { darkBy } from './dark-by';
import { culpritsOf, type FaultInputs, type FaultModel, makeFaultModel } from './fault-model';
import type { FaultsResults, SurfaceWorst, WorstCut } from './fault-result';
import { type DarkOf, findWorst } from './find-worst';
import { passesUnpowered } from './passes-unpowered';

export interface FaultsInputs extends Omit<FaultInputs, 'passes'> {
  readonly panels: readonly Pick<PanelData, 'id' | 'data'>[];
}

/** What each single failure darkens: the ten worst, the worst of each surface, the worst cut of a run. */
export function computeFaults({ panels, ...inputs }: FaultsInputs): FaultsResults {
  const passes = passesUnpowered(inputs.surfaces, panels);
  const model = makeFaultModel({ ...inputs, passes });
  const darkOf = keepBoxes(model);
  return {
    passes,
    worst: findWorst(model, darkOf).map(({ culprit, name, dark }) => ({
      kind: culprit.kind,
      name,
      where: whereIs(model, culprit),
      ...countDark(model.surfaces, dark),
      panelsWithoutReturns: darkBy(model, culprit, false).length,
    })),
    surfaces: worstBySurface(model, darkOf),
    runs: model.entryOf.length,
    runsWithReturn: model.returnOf.reduce((count, outlet) => (outlet < 0 ? count : count + 1), 0),
    worstCut: worstCut(model),
  };
}

/** Equipment that feeds more than one run or one circuit; what it darkens is never less than what its cables do. */
const boxes: readonly CulpritKind[] = ['circuit', 'breakout', 'processor', 'node', 'distro'];

/** What boxes darken is asked for twice, and worked out once. */
function keepBoxes(model: FaultModel): DarkOf {
  const kept = new Map(boxes.map((kind) => [kind, new Map<number, Uint32Array>()]));
  return (culprit) => {
    const known = kept.get(culprit.kind)?.get(culprit.index);
    if (known !== undefined) return known;
    const dark = darkBy(model, culprit);
    kept.get(culprit.kind)?.set(culprit.index, dark);
    return dark;
  };
}

function worstBySurface(model: FaultModel, darkOf: DarkOf): readonly SurfaceWorst[] {
  const worst = new Map<string, { readonly culprit: Culprit; readonly panels: number }>();
  const kinds = culpritKinds.filter((kind) => boxes.includes(kind));
  for (const kind of kinds) {
    for (const culprit of culpritsOf(model, kind)) {
      for (const { surfaceId, panels } of countDark(model.surfaces, darkOf(culprit)).surfaces) {
        if (panels > (worst.get(surfaceId)?.panels ?? 0)) worst.set(surfaceId, { culprit, panels });
      }
    }
  }
  return model.surfaces.surfaces.flatMap(({ surfaceId, letter, count }) => {
    const found = worst.get(surfaceId);
    if (found === undefined) return [];
    const { culprit, panels } = found;
    const { kind } = culprit;
    return [{ surfaceId, letter, name: culpritName(model, culprit), kind, panels, panelsOfSurface: count }];
  });
}

function worstCut(model: FaultModel): WorstCut | null {
  let worst: WorstCut | null = null;
  for (let run = 0; run < model.entryOf.length; run++) {
    const entry = model.entryOf[run]!;
    const panels = darkBy(model, { kind: 'home-run', index: entry }).length;
    if (worst !== null && panels <= worst.panels) continue;
    worst = { port: model.outlets[entry]!.port, panels, panelsOfRun: model.data.count[run]! };
  }
  return worst;
}
