import type { Plan } from '../plan/plan';
import { checkCeilings } from './ceilings/check-ceilings';
import { keepWallFixes } from './ceilings/keep-wall-fixes';
import { layOutCeilings } from './ceilings/lay-out-ceilings';
import { workCeilings } from './ceilings/work-ceilings';
import type { Chapter, ChapterId, Check, Step } from './chapter';
import type { Evaluation } from './evaluation';
import { checkFaults } from './faults/check-faults';
import { computeFaults } from './faults/compute-faults';
import { workFaults } from './faults/work-faults';
import { computeHeadline } from './headline';
import { checkHeat } from './heat/check-heat';
import { computeHeat, type HeatInputs } from './heat/compute-heat';
import { workHeat } from './heat/work-heat';
import { checkLinks } from './links/check-links';
import { computeLinks } from './links/compute-links';
import { workLinks } from './links/work-links';
import { checkMasses } from './masses/check-masses';
import { computeMasses } from './masses/compute-masses';
import { workMasses } from './masses/work-masses';
import { checkMaterials } from './materials/check-materials';
import { computeMaterials } from './materials/compute-materials';
import { countNetwork } from './materials/count-network';
import { countWiring } from './materials/count-wiring';
import { workMaterials } from './materials/work-materials';
import { memo } from './memo';
import { holdNames } from './names/hold-names';
import { nodesChapter } from './nodes/nodes-chapter';
import { checkPanels } from './panels/check-panels';
import { computePanels } from './panels/compute-panels';
import type { PanelShape } from './panels/panel-views';
import { workPanels } from './panels/work-panels';
import { pictureChapter } from './picture/picture-chapter';
import { planViews } from './plan-views';
import { checkPorts } from './ports/check-ports';
import { computePorts } from './ports/compute-ports';
import { workPorts } from './ports/work-ports';
import { checkPower } from './power/check-power';
import { computePower } from './power/compute-power';
import { signalLoad } from './power/signal-load';
import { workPower } from './power/work-power';
import { proveFixes } from './prove-fixes';
import { checkRuns } from './runs/check-runs';
import { computeRuns, type RunsInputs } from './runs/compute-runs';
import { solveZones } from './runs/solve-zones';
import { wireStage } from './runs/wire-stage';
import { workRuns } from './runs/work-runs';
import { countSignalItems } from './signal-items';
import { joinSurfaces } from './surfaces/join-surfaces';
import { checkWalls } from './walls/check-walls';
import { layOutWalls } from './walls/lay-out-walls';
import { workWalls } from './walls/work-walls';
import { checkWish } from './wish/check-wish';
import { computeWish } from './wish/compute-wish';
import { worstFirst } from './worst-first';
import { checkZones } from './zones/check-zones';
import { computeZones } from './zones/compute-zones';
import { workZones } from './zones/work-zones';

export interface Evaluator {
  /** Everything that follows from the plan. What did not change since one of the last plans is taken from there. */
  readonly evaluate: (plan: Plan) => Evaluation;
}

/** Called with the chapter's name whenever a chapter is computed and not remembered. */
type OnCompute = (chapter: ChapterId) => void;

/** An evaluator with memos of its own: a sweep with one does not throw out what the screen's remembers. */
export function createEvaluator(onCompute: OnCompute = () => {}): Evaluator {
  /** A chapter of one record of inputs, computed anew only when a field of the record is another one. */
  function chapterOf<Inputs extends object, Results>(
    id: ChapterId,
    compute: (inputs: Inputs) => Results,
    check: (inputs: Inputs, results: Results) => Check[],
    work: (inputs: Inputs, results: Results) => Step[],
  ): (inputs: Inputs) => Chapter<Results> {
    return memo((inputs: Inputs) => {
      onCompute(id);
      const results = compute(inputs);
      return { results, checks: check(inputs, results), working: work(inputs, results) };
    });
  }

  const views = planViews();
  const walls = memo((...args: Parameters<typeof layOutWalls>) => {
    onCompute('walls');
    return layOutWalls(...args);
  });
  const ceilings = memo((...args: Parameters<typeof layOutCeilings>) => {
    onCompute('ceilings');
    return layOutCeilings(...args);
  });
  const join = memo(joinSurfaces);
  const solve = solveZones();
  const names = holdNames();
  const wallFixes = memo(keepWallFixes);
  const pictureOf = pictureChapter(() => onCompute('picture'));
  const nodesOf = nodesChapter(() => onCompute('nodes'));
  const signalItems = memo(countSignalItems);
  const distroCounts = memo((distros: Evaluation['power']['results']['distros'], itemId: string | null) => [
    { itemId, count: distros.length },
  ]);
  const letters = memo(
    (surfaces: Evaluation['surfaces']) => new Map(surfaces.surfaces.map((s) => [s.surfaceId, s.letter])),
  );
  const wiringCounts = memo(countWiring);

  const chapters = {
    panels: chapterOf(
      'panels',
      (inputs: Pick<Plan['catalogue'], 'panels' | 'processors'> & { typicalLevel: number }) =>
        computePanels(inputs.panels),
      (inputs) => checkPanels(inputs.panels, inputs.processors, inputs.typicalLevel),
      (inputs, results) => workPanels(inputs.panels, results),
    ),
    ports: chapterOf('ports', computePorts, checkPorts, workPorts),
    zones: chapterOf('zones', computeZones, checkZones, workZones),
    runs: memo((inputs: RunsInputs): Evaluation['runs'] => {
      onCompute('runs');
      const wired = wireStage(inputs);
      const results = computeRuns(inputs, wired);
      return { results, checks: checkRuns(inputs, wired, results), working: workRuns(inputs, results) };
    }),
    links: chapterOf('links', computeLinks, checkLinks, workLinks),
    power: chapterOf('power', computePower, checkPower, workPower),
    faults: chapterOf('faults', computeFaults, checkFaults, workFaults),
    heat: chapterOf(
      'heat',
      (inputs: HeatInputs & { readonly coolingW: number | null }) => computeHeat(inputs),
      checkHeat,
      workHeat,
    ),
    masses: chapterOf('masses', computeMasses, checkMasses, workMasses),
    materials: chapterOf('materials', computeMaterials, checkMaterials, workMaterials),
    wish: chapterOf('wish', computeWish, checkWish, () => []),
  };
  const wallsChapter = memo(
    (
      plan: Pick<Plan, 'walls'>,
      wish: Pick<Plan['wish'], 'hall' | 'vehicle' | 'wall'>,
      shapes: readonly PanelShape[],
    ): Evaluation['walls'] => {
      const results = walls(plan.walls, shapes);
      return {
        results,
        checks: checkWalls(plan.walls, shapes, results, wish.hall, wish.vehicle, wish.wall),
        working: workWalls(plan.walls, shapes, results),
      };
    },
  );
  const ceilingsChapter = memo(
    (
      plan: Pick<Plan, 'ceilings'>,
      wish: Pick<Plan['wish'], 'hall' | 'vehicle'>,
      shapes: readonly PanelShape[],
      below: Evaluation['walls']['results'],
    ): Evaluation['ceilings'] => {
      const results = ceilings(plan.ceilings, shapes, below);
      return {
        results,
        checks: checkCeilings(plan.ceilings, shapes, below, results, wish.hall, wish.vehicle),
        working: workCeilings(plan.ceilings, shapes, below, results),
      };
    },
  );

  /** From top to bottom: each line takes what it hangs on from the lines above. */
  function evaluate(plan: Plan): Evaluation {
    const { catalogue, wish, signal } = plan;
    const { processors } = catalogue;
    const shapes = views.shapes(catalogue.panels);
    const panels = chapters.panels({ panels: catalogue.panels, processors, typicalLevel: plan.power.typicalLevel });
    const { hall, vehicle, wall } = wish;
    const wallsAlone = wallsChapter({ walls: plan.walls }, { hall, vehicle, wall }, shapes);
    const ceilingsNow = ceilingsChapter({ ceilings: plan.ceilings }, { hall, vehicle }, shapes, wallsAlone.results);
    const stage = { walls: plan.walls, ceilings: plan.ceilings, shapes, hall, vehicle };
    const wallsNow = wallFixes(wallsAlone, ceilingsNow, stage);
    const surfaces = join(wallsNow.results, ceilingsNow.results);
    const picture = pictureOf(plan.picture, surfaces, catalogue.panels);
    const ports = chapters.ports({
      signal,
      processors,
      breakouts: catalogue.breakouts,
      panels: views.data(catalogue.panels),
      surfaces,
      picture: picture.results,
    });
    const { timing, containerId, linkId, bySurface } = plan.feed;
    const zonesAlone = chapters.zones({
      signal,
      timing,
      containerId,
      surfaces,
      picture: picture.results,
      ports: ports.results,
      solve,
    });
    const ground = { surfaces, walls: views.paths(plan.walls), ceilings: ceilingsNow.results };
    const held = names.locate(plan.names, ground);
    const zones = names.number(zonesAlone, held, surfaces);
    const runs = chapters.runs({
      ...ground,
      signal,
      ports: ports.results,
      zones: zones.results,
      solve,
      handChanges: plan.handChanges,
      existingWiring: plan.existingWiring,
      held: held?.ports ?? null,
    });
    const nodes = nodesOf(plan, { surfaces, picture: picture.results, zones: zones.results });
    const links = chapters.links({
      timing,
      containerId,
      linkId,
      bySurface,
      surfaces,
      picture: picture.results,
      ports: ports.results,
      nodes: nodes.results.nodes,
    });
    const { nodes: renderNodes, spareNodes } = nodes.results;
    const gear = { processors, zones: zones.results, runs: runs.results, renderNodes, spareNodes };
    const signalLoadW = signalLoad({ ...gear, breakouts: catalogue.breakouts, nodes: catalogue.nodes });
    const power = chapters.power({
      power: plan.power,
      distros: catalogue.distros,
      panels: views.power(catalogue.panels),
      surfaces,
      signalLoadW,
      held: held?.circuits ?? null,
    });
    const faults = chapters.faults({
      surfaces,
      zones: zones.results.zones,
      runs: runs.results,
      nodes: nodes.results,
      power: power.results,
      panels: views.data(catalogue.panels),
    });
    const heat = chapters.heat({
      heat: plan.heat,
      hall: wish.hall,
      loads: power.results.loads,
      letters: letters(surfaces),
      signalW: signalLoadW,
      coolingW: wish.coolingW,
    });
    const masses = chapters.masses({
      masses: plan.masses,
      surfaces,
      panels: views.masses(catalogue.panels),
      walls: views.supports(plan.walls),
    });
    const materials = chapters.materials({
      materials: plan.materials,
      stock: wish.stock,
      surfaces,
      panels: views.purchases(catalogue.panels),
      gear: signalItems(gear),
      processors,
      breakouts: catalogue.breakouts,
      nodes: catalogue.nodes,
      distros: catalogue.distros,
      distroCounts: distroCounts(power.results.distros, plan.power.distroId),
      cables: catalogue.cables,
      wiring: wiringCounts(runs.results, power.results, links.results, countNetwork(nodes.results), surfaces.total),
    });
    const wishNow = chapters.wish({
      wish,
      wall: wallsNow.results.walls[0] ?? null,
      picture: picture.results,
      power: power.results,
      heat: heat.results,
      materials: materials.results,
    });
    const chaptersNow = {
      wish: wishNow,
      panels,
      walls: wallsNow,
      ceilings: ceilingsNow,
      picture,
      ports,
      zones,
      runs,
      nodes,
      links,
      power,
      faults,
      heat,
      masses,
      materials,
    };
    const all = { surfaces, ...chaptersNow };
    return { ...all, headline: computeHeadline(all), checks: worstFirst(Object.values(chaptersNow)) };
  }
  return { evaluate: proveFixes(evaluate) };
}
