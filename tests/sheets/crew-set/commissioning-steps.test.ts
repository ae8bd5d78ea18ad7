import { expect, test } from 'vitest';
import { emptyPlan } from '../../../src/plan/empty-plan';
import type { Plan } from '../../../src/plan/plan';
import { commissioningSteps } from '../../../src/sheets/crew-set/commissioning-steps';
import { samplePlan } from '../../arbitraries/sample-plans';
import { evaluated, options } from './sample-set';

const horseshoe = evaluated(samplePlan('horseshoe'));
const flat = evaluated(samplePlan('flat'));
const stepsOf = ({ plan, evaluation }: typeof flat, changes: Partial<Plan> = {}) =>
  commissioningSteps({ ...plan, ...changes }, evaluation, options.display);
const rowsOf = (stage: typeof flat, title: RegExp, changes: Partial<Plan> = {}) =>
  stepsOf(stage, changes).find((step) => title.test(step.title))?.rows ?? [];
const wanted = (stage: typeof flat, title: RegExp, what: RegExp, changes: Partial<Plan> = {}) =>
  rowsOf(stage, title, changes).find((row) => what.test(row.what))?.wanted;

test('commissioningSteps follow the order of the work', () => {
  expect(stepsOf(horseshoe).map(({ title }) => title)).toEqual([
    '1 Survey and seams',
    '2 Before panels have voltage',
    '3 Switching on in steps',
    '4 Full white on every panel',
    '5 Names proved by a test picture',
    '6 Colour and seams match',
    '7 Sync and delay',
    '8 Returns pulled',
    '9 Hoists',
    '10 Handed over',
  ]);
});

test('commissioningSteps of a stage without a ceiling have no hoists, and number on', () => {
  const titles = stepsOf(flat).map(({ title }) => title);
  expect(titles.join()).not.toMatch(/Hoists/);
  expect(titles.at(-1)).toBe('9 Handed over');
});

test('commissioningSteps want the volts of the supply, between the wires that panels sit on', () => {
  const supply = { kind: 'wye', legToNeutralV: 230, lowestShare: 0.9 } as const;
  const power = { ...flat.plan.power, supply };
  // 230 V x 0.9 = 207 V; between legs x sqrt 3: 398.4 V, and 358.5 V.
  const volts = (connection: Plan['power']['connection']) =>
    wanted(flat, /voltage/, /^Distro 1: volts/, { power: { ...power, connection } });
  expect(volts('leg-to-neutral')).toBe('230 V, not below 207 V');
  expect(volts('leg-to-leg')).toBe('398 V, not below 359 V');
});

test('commissioningSteps want the amperes of every leg at full white, service first', () => {
  const rows = rowsOf(horseshoe, /Full white/);
  const { legs, distros } = horseshoe.evaluation.power.results;
  expect(rows.slice(0, legs.length).map(({ what }) => what)).toEqual(legs.map(({ leg }) => `Service: ${leg}`));
  expect(rows).toHaveLength(legs.length + distros.reduce((sum, distro) => sum + distro.legs.length, 0) + 1);
  for (const [i, load] of legs.entries())
    expect(rows[i]!.wanted).toContain(`${Number(load.currentA.toPrecision(3))} A`);
});

test('commissioningSteps count the returns to be pulled, or say that there are none', () => {
  expect(wanted(flat, /Returns/, /no run goes back/)).toBe('none planned');
  const returning = evaluated({ ...flat.plan, signal: { ...flat.plan.signal, returns: 'port' } });
  const returns = returning.evaluation.runs.results.runs.filter(({ returnPort }) => returnPort !== null).length;
  expect(returns).toBeGreaterThan(0);
  expect(wanted(returning, /Returns/, /pulled in turn/)).toBe(`${returns} return${returns === 1 ? '' : 's'}`);
});

test('commissioningSteps prove every panel and port by its processor', () => {
  const rows = rowsOf(horseshoe, /Names/);
  const counts = rows.map((row) => (row.wanted.match(/\d+/g) ?? []).map(Number));
  expect(counts.reduce((sum, [panels]) => sum + panels!, 0)).toBe(horseshoe.evaluation.headline.panels);
  expect(counts.reduce((sum, [, ports]) => sum + ports!, 0)).toBe(horseshoe.evaluation.runs.results.runs.length);
});

test('commissioningSteps want the limits of a ceiling where the plan has them', () => {
  // The sample travels from 3.2 m to 7.6 m.
  expect(wanted(horseshoe, /Hoists/, /lower limit/)).toBe('3.20 m');
  expect(wanted(horseshoe, /Hoists/, /upper limit/)).toBe('7.60 m');
});

test('commissioningSteps of nothing are none', () => {
  expect(stepsOf(evaluated(emptyPlan({ id: 'p', name: '', lengths: 'metric' })))).toEqual([]);
});
