import type { Evaluation } from '../../calc/evaluation';
import { legScheme } from '../../calc/power/leg-scheme';
import type { Plan } from '../../plan/plan';
import { counted } from '../../units/counted';
import type { DisplayOptions } from '../../units/display-options';
import { formatQuantity } from '../../units/format-quantity';
import type { Unit } from '../../units/unit';

/** What is measured or proved, and what the plan wants of it. */
export interface CommissioningRow {
  readonly what: string;
  readonly wanted: string;
}

export interface CommissioningStep {
  readonly title: string;
  readonly rows: readonly CommissioningRow[];
}

const electrician = 'an electrician decides';
const notStated = 'not stated';

/**
 * What is measured before a stage is handed over, in the order of the work, with this plan's own figures where it has them:
 * survey; before voltage; switching on; amperes; names; colour; sync and delay; returns; hoists; what is handed over.
 */
export function commissioningSteps(
  plan: Plan,
  evaluation: Evaluation,
  display: DisplayOptions,
): readonly CommissioningStep[] {
  const of = (value: number, unit: Unit) => formatQuantity(value, unit, display);
  const steps: readonly CommissioningStep[] = [
    { title: 'Survey and seams', rows: surveyRows(evaluation, of) },
    { title: 'Before panels have voltage', rows: voltageRows(plan, evaluation, of) },
    { title: 'Switching on in steps', rows: switchingRows(evaluation) },
    { title: 'Full white on every panel', rows: currentRows(evaluation, of) },
    { title: 'Names proved by a test picture', rows: nameRows(evaluation) },
    { title: 'Colour and seams match', rows: colourRows(evaluation) },
    { title: 'Sync and delay', rows: syncRows(evaluation, of) },
    { title: 'Returns pulled', rows: returnRows(evaluation) },
    { title: 'Hoists', rows: hoistRows(plan, evaluation, of) },
    { title: 'Handed over', rows: handOverRows(plan, evaluation) },
  ];
  return steps
    .filter(({ rows }) => rows.length > 0)
    .map(({ title, rows }, i) => ({ title: `${i + 1} ${title}`, rows }));
}

type Write = (value: number, unit: Unit) => string;

/** Surfaces with a panel on them, each with the name that people call it. */
function standing({ surfaces }: Evaluation) {
  return surfaces.surfaces
    .filter(({ count }) => count > 0)
    .map((table) => ({ table, name: `${table.letter} ${table.name}`.trim() }));
}

function surveyRows(evaluation: Evaluation, of: Write): readonly CommissioningRow[] {
  const length = (what: string, mm: number | null) => (mm === null ? [] : [{ what, wanted: of(mm, 'mm') }]);
  return standing(evaluation).flatMap(({ table, name }) => {
    const wall = evaluation.walls.results.walls.find(({ wallId }) => wallId === table.surfaceId);
    if (wall === undefined) {
      return [
        ...length(`${name}: LED face above the floor, at its four outermost corners`, table.zMm[0]!),
        { what: `${name}: greatest step from panel to panel`, wanted: notStated },
      ];
    }
    return [
      ...length(`${name}: inside diameter`, wall.insideDiameterMm),
      ...length(`${name}: opening`, wall.openingMm),
      ...length(`${name}: top above the floor, lowest and highest column`, wall.baseMm + wall.heightMm),
      { what: `${name}: greatest step from column to column`, wanted: notStated },
    ];
  });
}

function voltageRows({ power }: Plan, evaluation: Evaluation, of: Write): readonly CommissioningRow[] {
  const { circuits, distros } = evaluation.power.results;
  if (circuits.length === 0) return [];
  const { nominalV, lowestV } = legScheme(power);
  const across = power.connection === 'leg-to-leg' ? 'leg to leg' : 'leg to neutral';
  const volts = `${of(nominalV, 'V')}, not below ${of(lowestV, 'V')}`;
  const all = counted(circuits.length, 'circuit');
  return [
    { what: 'Bonding of frames, truss and racks', wanted: electrician },
    { what: 'Insulation of every circuit', wanted: `${all}; ${electrician}` },
    { what: 'Polarity of every circuit', wanted: all },
    { what: 'Residual-current devices trip', wanted: electrician },
    ...distros.map(({ number }) => ({ what: `Distro ${number}: volts ${across}, no panel plugged in`, wanted: volts })),
  ];
}

function switchingRows(evaluation: Evaluation): readonly CommissioningRow[] {
  const { distros } = evaluation.power.results;
  if (distros.length === 0) return [];
  const signal = [
    counted(evaluation.zones.results.processors, 'processor'),
    counted(evaluation.nodes.results.nodes.length, 'node'),
  ];
  return [
    { what: 'Processors and nodes first', wanted: signal.join(', ') },
    ...distros.map(({ number, circuits }) => ({
      what: `Distro ${number}: its circuits one after the other`,
      wanted: counted(circuits, 'circuit'),
    })),
  ];
}

function currentRows(evaluation: Evaluation, of: Write): readonly CommissioningRow[] {
  const { legs, distros, circuits } = evaluation.power.results;
  if (circuits.length === 0) return [];
  const lines = [
    ...legs.map((load) => ({ where: 'Service', load })),
    ...distros.flatMap((distro) => distro.legs.map((load) => ({ where: `Distro ${distro.number}`, load }))),
  ];
  return [
    ...lines.map(({ where, load }) => ({
      what: `${where}: ${load.leg}`,
      wanted: `${of(load.currentA, 'A')}, limit ${load.limitA === null ? notStated : of(load.limitA, 'A')}`,
    })),
    { what: 'Connectors and cables under load', wanted: 'none warm' },
  ];
}

function nameRows(evaluation: Evaluation): readonly CommissioningRow[] {
  const { zones, runs } = evaluation;
  return zones.results.zones.map((zone, index) => {
    const ports = runs.results.runs.filter((run) => run.zone === index).length;
    return {
      what: `Processor ${zone.processor}: every panel shows its own name, every port its own number`,
      wanted: `${counted(zone.panels, 'panel')}, ${counted(ports, 'port')}`,
    };
  });
}

function colourRows(evaluation: Evaluation): readonly CommissioningRow[] {
  return standing(evaluation).flatMap(({ table, name }) => [
    { what: `${name}: batch of its panels`, wanted: `one batch, ${counted(table.count, 'panel')}` },
    { what: `${name}: colour and brightness, panel to panel, white and grey`, wanted: 'alike' },
    { what: `${name}: seams under a moving picture`, wanted: 'none stands out' },
  ]);
}

function syncRows(evaluation: Evaluation, of: Write): readonly CommissioningRow[] {
  const { sync, delays } = evaluation.nodes.results;
  const letters = new Map(evaluation.surfaces.surfaces.map(({ surfaceId, letter }) => [surfaceId, letter]));
  return [
    ...sync
      .filter(({ kind }) => kind !== 'splitter' && kind !== 'switch')
      .map(({ to, phaseMs, phaseDegrees }) => ({
        what: `Phase of ${to}`,
        wanted: `${of(phaseMs / 1000, 's')}, ${of(phaseDegrees, 'deg')} of a frame`,
      })),
    ...delays.map(({ surfaceId, ms, frames }) => ({
      what: `${letters.get(surfaceId) ?? ''}: delay from tracked camera to lit panel`,
      wanted:
        ms === null || frames === null
          ? notStated
          : `${of(ms / 1000, 's')}, ${counted(Math.round(frames * 100) / 100, 'frame')}`,
    })),
  ];
}

function returnRows(evaluation: Evaluation): readonly CommissioningRow[] {
  const { runs } = evaluation.runs.results;
  return standing(evaluation).flatMap(({ table, name }) => {
    const mine = runs.filter(({ surfaceId }) => surfaceId === table.surfaceId);
    const returns = mine.filter(({ returnPort }) => returnPort !== null).length;
    if (mine.length === 0) return [];
    return [
      returns === 0
        ? { what: `${name}: no run goes back; a home run that is pulled darkens its panels`, wanted: 'none planned' }
        : {
            what: `${name}: every return and every home run pulled in turn, no panel goes dark`,
            wanted: counted(returns, 'return'),
          },
    ];
  });
}

function hoistRows(plan: Plan, evaluation: Evaluation, of: Write): readonly CommissioningRow[] {
  return standing(evaluation).flatMap(({ table, name }) => {
    const ceiling = plan.ceilings.find(({ id }) => id === table.surfaceId);
    if (ceiling === undefined) return [];
    const mass = evaluation.masses.results.surfaces.find(({ surfaceId }) => surfaceId === table.surfaceId);
    return [
      { what: `${name}: lower limit stops it`, wanted: of(ceiling.height.lowestMm, 'mm') },
      { what: `${name}: upper limit stops it`, wanted: of(ceiling.height.highestMm, 'mm') },
      { what: `${name}: emergency stop, group stop on over- and underload`, wanted: 'stops every hoist' },
      {
        what: `${name}: load weighed on all hoists together`,
        wanted: mass === undefined ? notStated : `${of(mass.totalKg, 'kg')} and what it hangs on`,
      },
    ];
  });
}

function handOverRows({ name, revision }: Plan, evaluation: Evaluation): readonly CommissioningRow[] {
  if (evaluation.surfaces.total === 0) return [];
  const spares = evaluation.materials.results.lines.filter(({ spare }) => spare > 0);
  return [
    { what: `Files: ${name}`, wanted: revision === '' ? 'as built' : `revision ${revision}, as built` },
    {
      what: 'Firmware versions and settings of processors and nodes, written down',
      wanted: `${counted(evaluation.zones.results.processors, 'processor')}, ${counted(evaluation.nodes.results.nodes.length, 'node')}`,
    },
    { what: 'Drawings as built: positions surveyed, deviations marked', wanted: 'one set' },
    ...spares.map((line) => ({ what: `Spares: ${line.name}`, wanted: `${line.spare}` })),
  ];
}
