import type { Source, Step } from '../chapter';
import type { PanelPower } from '../panels/panel-views';
import { noBranch } from './branch-current';
import { type BranchLoad, branchLoads } from './branch-loads';
import type { PowerInputs } from './compute-power';
import { type LegScheme, legScheme } from './leg-scheme';
import type { PowerResults } from './power-result';
import { signalCurrent, signalPowerFactor } from './signal-current';
import { surfaceCurrents } from './surface-currents';
import { typicalWatts } from './typical-watts';
import { usedPanels } from './used-panels';

const phasors: Source = { kind: 'source', text: 'any circuits textbook: currents added as phasors' };
const onBranch = (branch: string, part: string): Source => ({
  kind: 'source',
  text: `any circuits textbook: panels on ${branch}, the part of their current ${part}`,
});

/** In-phase part p and lagging part q of one branch, from its panels. */
function workBranch(
  figure: string,
  i: number,
  branch: string,
  load: BranchLoad,
  used: readonly PanelPower[],
  V: number,
  wattsOf: (panel: PanelPower) => number,
): Step[] {
  const on = used.filter((panel) => (load.panels.get(panel.id) ?? 0) > 0);
  const numbers: Record<string, number> = { V };
  const factors: Record<string, number> = {};
  on.forEach((panel, k) => {
    numbers[`n${k + 1}`] = load.panels.get(panel.id)!;
    numbers[`W${k + 1}`] = wattsOf(panel);
    factors[`pf${k + 1}`] = panel.power.powerFactor;
  });
  const sum = (term: (k: number) => string) => (on.length === 0 ? '0' : on.map((_, k) => term(k + 1)).join(' + '));
  return [
    {
      figure,
      symbol: `p${i}`,
      expression: `(${sum((k) => `n${k} * W${k}`)}) / V`,
      numbers,
      value: load.activeA,
      unit: 'A',
      source: onBranch(branch, 'in step with the voltage'),
    },
    {
      figure,
      symbol: `q${i}`,
      expression: `(${sum((k) => `n${k} * W${k} * sqrt(1 - pf${k}^2) / pf${k}`)}) / V`,
      numbers: { ...numbers, ...factors },
      value: load.reactiveA,
      unit: 'A',
      source: onBranch(branch, 'a quarter period behind'),
    },
  ];
}

function workSignal(figure: string, { power, signalLoadW }: PowerInputs, scheme: LegScheme): Step[] {
  const volts = power.supply.legToNeutralV * power.supply.lowestShare;
  const load = signalCurrent(power.supply, signalLoadW);
  return [
    {
      figure,
      symbol: 'ps',
      expression: 'signal / (legs * volts)',
      numbers: { signal: signalLoadW, legs: scheme.legs.length, volts },
      value: load.activeA,
      unit: 'A',
      source: { kind: 'practice', text: 'signal equipment spread evenly over the legs, the part in step' },
    },
    {
      figure,
      symbol: 'qs',
      expression: 'ps * sqrt(1 - pf^2) / pf',
      numbers: { ps: load.activeA, pf: signalPowerFactor },
      value: load.reactiveA,
      unit: 'A',
      source: { kind: 'practice', text: 'power factor of supplies with correction', fromMemory: true },
    },
  ];
}

/** Branches that meet on a leg: its own, or the pair that begins on it and the pair that ends on it. */
function branchesOn(scheme: LegScheme, leg: number): readonly number[] {
  if (scheme.branches.length === 1) return [0];
  return scheme.branches[0] === 'L1' ? [leg] : [leg, (leg + 2) % 3];
}

function workNeutral(results: PowerResults, scheme: LegScheme, loads: readonly BranchLoad[]): Step {
  const figure = 'neutral at mains frequency';
  const common = { figure, symbol: 'N', value: results.neutralA ?? 0, unit: 'A' } as const;
  if (common.value === 0) {
    const text = scheme.branches[0] === 'L1' ? 'equal legs cancel' : 'no panel between leg and neutral';
    return { ...common, expression: '0', numbers: {}, source: { kind: 'source', text } };
  }
  const numbers = Object.fromEntries(
    loads.flatMap((load, i) => [
      [`p${i + 1}`, load.activeA],
      [`q${i + 1}`, load.reactiveA],
    ]),
  );
  const expression =
    scheme.legs.length === 2
      ? 'sqrt((p1 - p2)^2 + (q1 - q2)^2)'
      : 'sqrt((p1 - (p2 + p3) / 2 - sqrt(3) / 2 * (q2 - q3))^2 + (q1 - (q2 + q3) / 2 + sqrt(3) / 2 * (p2 - p3))^2)';
  return { ...common, expression, numbers, source: phasors };
}

const fullWhite = (panel: PanelPower) => panel.power.fullWhiteW;

/** The worst of some legs, each branch on it from its panels. */
function workWorstLeg(
  title: string,
  inputs: PowerInputs,
  legs: PowerResults['legs'],
  loads: readonly BranchLoad[],
  wattsOf: (panel: PanelPower) => number,
): Step[] {
  const { power } = inputs;
  const scheme = legScheme(power);
  const used = usedPanels(inputs);
  const lines = legs.filter((load) => load.leg !== 'N');
  const worstA = Math.max(...lines.map((load) => load.currentA));
  const worst = lines.findIndex((load) => load.currentA === worstA);
  const figure = `${title}, ${lines[worst]!.leg}`;
  const on = branchesOn(scheme, worst);
  const signal = power.includesSignal ? signalCurrent(power.supply, inputs.signalLoadW) : noBranch;
  const numbers: Record<string, number> = { ps: signal.activeA, qs: signal.reactiveA };
  on.forEach((branch, i) => {
    numbers[`p${i + 1}`] = loads[branch]!.activeA;
    numbers[`q${i + 1}`] = loads[branch]!.reactiveA;
  });
  return [
    ...on.flatMap((branch, i) =>
      workBranch(figure, i + 1, scheme.branches[branch]!, loads[branch]!, used, scheme.lowestV, wattsOf),
    ),
    ...(power.includesSignal ? workSignal(figure, inputs, scheme) : []),
    {
      figure,
      symbol: 'I',
      expression:
        on.length === 1
          ? 'sqrt((p1 + ps)^2 + (q1 + qs)^2)'
          : 'sqrt((sqrt(3) / 2 * (p1 + p2) + (q1 - q2) / 2 + ps)^2 + ((p1 - p2) / 2 - sqrt(3) / 2 * (q1 + q2) - qs)^2)',
      numbers,
      value: worstA,
      unit: 'A',
      source: phasors,
    },
  ];
}

/** The worst leg of the stage at full white and typically, and its neutral, each branch from its panels. Nothing where the legs
 *  cannot be computed. */
export function workLegs(inputs: PowerInputs, results: PowerResults): Step[] {
  const { power, surfaces } = inputs;
  if (results.worstLegA === null || surfaces.total === 0) return [];
  const scheme = legScheme(power);
  const loadsAt = (wattsOf: (panel: PanelPower) => number) =>
    branchLoads(surfaces, surfaceCurrents(inputs, wattsOf), scheme, results.circuits, results.circuitOf);
  const loads = loadsAt(fullWhite);
  const typical = typicalWatts(power);
  const neutral = 'neutral at mains frequency';
  const used = usedPanels(inputs);
  const isNeutralShown = scheme.branches[0] === 'L1' && results.neutralA !== 0;
  const neutralSteps = isNeutralShown
    ? scheme.branches.flatMap((branch, i) =>
        workBranch(neutral, i + 1, branch, loads[i]!, used, scheme.lowestV, fullWhite),
      )
    : [];
  return [
    ...workWorstLeg('worst leg', inputs, results.legs, loads, fullWhite),
    ...workWorstLeg('worst leg, typical', inputs, results.typicalLegs, loadsAt(typical), typical),
    ...neutralSteps,
    workNeutral(results, scheme, loads),
  ];
}
